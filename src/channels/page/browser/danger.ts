import { readDanger } from '#parsers/danger';

declare global {
  interface Window {
    /** The kinds of danger that a text tells of. There once the page is shown: nothing waits for it. */
    dangersIn?: (text: string) => string[];
  }
}

window.dangersIn = (text) => readDanger(text).map(({ what }) => what);
