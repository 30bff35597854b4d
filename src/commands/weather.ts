import type { Assistant, Book, Complain } from '#assistant';
import { type Forecasts, forecasts, serviceOf, type WeatherService } from '#weather';
import { Problem } from './problem.ts';

/** The weather service that the environment asks for; one that cannot be used is a plain line before anything opens. */
export function weatherAsked(environment: NodeJS.ProcessEnv): WeatherService | null {
  const service = serviceOf(environment);
  if (typeof service === 'string') throw new Problem(service);
  return service;
}

/** The forecast, where a service is asked for; without one nothing is fetched. */
export function overWeather(parts: {
  service: WeatherService | null;
  book: Book;
  assistant: Assistant;
  warn: (line: string) => void;
  complain: Complain;
}): Forecasts {
  const { service, ...others } = parts;
  return service ? forecasts({ service, ...others }) : { look: async () => {}, ended: async () => {} };
}
