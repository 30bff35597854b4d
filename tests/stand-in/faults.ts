import type { ServerResponse } from 'node:http';

/** How the next calls of a method go wrong. `answer` is carried out before it is spoilt where it says so. */
export type Fault =
  | { kind: 'refuse'; code: 400 | 401 | 403 | 404 | 409; description: string }
  | { kind: 'too-many'; retryAfterS: number }
  | { kind: 'server-error'; code: 500 | 502 | 503 }
  /** The connection is cut; with `after`, the call has taken effect all the same. */
  | { kind: 'drop'; after?: boolean }
  | { kind: 'truncated' }
  | { kind: 'html' }
  | { kind: 'slow'; ms: number };

type Planned = { fault: Fault; times: number; chat: number | null };

/** Faults to come, by method (`*` is every method). */
export const faultPlan = () => {
  const planned = new Map<string, Planned[]>();
  return {
    plan: (method: string, fault: Fault, options: { times?: number; chat?: number } = {}): void => {
      const list = planned.get(method) ?? [];
      list.push({ fault, times: options.times ?? 1, chat: options.chat ?? null });
      planned.set(method, list);
    },
    next: (method: string, payload: Record<string, unknown>): Fault | null => {
      for (const name of [method, '*']) {
        const found = planned
          .get(name)
          ?.find((one) => one.times > 0 && (one.chat === null || one.chat === Number(payload.chat_id)));
        if (found) {
          found.times -= 1;
          return found.fault;
        }
      }
      return null;
    },
    clear: (): void => planned.clear(),
  };
};

/** True where the call must take effect although its answer is spoilt. */
export const takesEffect = (fault: Fault): boolean =>
  fault.kind === 'slow' || fault.kind === 'truncated' || (fault.kind === 'drop' && fault.after === true);

export const spoil = async (fault: Fault, response: ServerResponse, answer: string): Promise<void> => {
  const json = (code: number, body: unknown) => {
    response.writeHead(code, { 'content-type': 'application/json' });
    response.end(JSON.stringify(body));
  };
  switch (fault.kind) {
    case 'refuse':
      return json(fault.code, { ok: false, error_code: fault.code, description: fault.description });
    case 'too-many':
      return json(429, {
        ok: false,
        error_code: 429,
        description: `Too Many Requests: retry after ${fault.retryAfterS}`,
        parameters: { retry_after: fault.retryAfterS },
      });
    case 'server-error':
      return json(fault.code, { ok: false, error_code: fault.code, description: 'Internal Server Error' });
    case 'drop':
      response.destroy();
      return;
    case 'truncated':
      response.writeHead(200, { 'content-type': 'application/json' });
      response.end(answer.slice(0, Math.floor(answer.length / 2)));
      return;
    case 'html':
      response.writeHead(502, { 'content-type': 'text/html' });
      response.end('<html><body><h1>502 Bad Gateway</h1></body></html>');
      return;
    case 'slow':
      await new Promise((done) => setTimeout(done, fault.ms));
      response.writeHead(200, { 'content-type': 'application/json' });
      response.end(answer);
  }
};
