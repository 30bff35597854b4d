declare module 'ml-regression' {
  /** y = B·exp(A·x), by a line through the logarithms. */
  export class ExponentialRegression {
    constructor(x: number[], y: number[]);
    readonly A: number;
    readonly B: number;
  }
}
