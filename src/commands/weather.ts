import type { Assistant, Book, Complain } from '#assistant';
import { type Forecasts, forecasts, serviceOf } from '#weather';
import { Problem } from './problem.ts';

/** The forecast, where the environment asks for one; without that nothing is fetched. */
export function overWeather(parts: {
  environment: NodeJS.ProcessEnv;
  book: Book;
  assistant: Assistant;
  warn: (line: string) => void;
  complain: Complain;
}): Forecasts {
  const { environment, book, assistant, warn, complain } = parts;
  const service = serviceOf(environment);
  if (typeof service === 'string') throw new Problem(service);
  if (!service) return { look: async () => {}, ended: async () => {} };
  return forecasts({ service, book, assistant, warn, complain });
}
