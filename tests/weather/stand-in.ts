import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { onTestFinished } from 'vitest';
import { serviceOf } from '../../src/weather/service.ts';

/** A made-up valley: what a service would say of it. */
export const VALLEY = {
  daily: {
    time: ['2026-11-24', '2026-11-25', '2026-11-26', '2026-11-27'],
    precipitation_mm: [0, 12.5, 4.9, 30],
    min_celsius: [3, 0, 1, -4],
    max_celsius: [9, 8, null, 7],
    wind_kmh: [12, 39.9, 40, 55],
  },
};

/** A weather service on loopback that answers as it is told; gone when the test is done. */
export async function standIn(answer: RequestListener) {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    answer(request, response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(
    () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  );
  const { port } = server.address() as AddressInfo;
  return { asked, address: `http://127.0.0.1:${port}/days?at={latitude},{longitude}` };
}

export const json =
  (body: unknown): RequestListener =>
  (_request, response) =>
    void response.setHeader('content-type', 'application/json').end(JSON.stringify(body));

export function service(address: string, names?: string) {
  const made = serviceOf({ WEATHER_URL: address, ...(names ? { WEATHER_FIELDS: names } : {}) });
  if (!made || typeof made === 'string') throw new Error(`no service: ${made}`);
  return made;
}
