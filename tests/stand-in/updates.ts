import type { Update, World } from './world.ts';

type Waiter = {
  answer: (result: Update[] | 'conflict') => void;
  offset: number;
  limit: number;
  timer: NodeJS.Timeout;
};

/** What an update is without its number. */
export type News = { [K in keyof Update]?: Update[K] };

/** Kinds that a bot gets only when it asks for them by name. */
const ON_REQUEST = ['chat_member', 'message_reaction', 'message_reaction_count'];

/** The queue behind getUpdates: kept until confirmed by a higher offset, one listener at a time. */
export const updateQueue = (world: World, firstId: number) => {
  let nextId = firstId;
  let queue: Update[] = [];
  let delivered: Update[] = [];
  let allowed: string[] = [];
  let waiter: Waiter | null = null;
  let confirmedUpTo = firstId - 1;

  const take = (offset: number, limit: number): Update[] => {
    const batch = queue.filter((update) => update.update_id >= offset).slice(0, limit);
    delivered = batch.length > 0 ? batch : delivered;
    return batch;
  };
  const wake = (): void => {
    if (!waiter) return;
    const batch = take(waiter.offset, waiter.limit);
    if (batch.length === 0) return;
    clearTimeout(waiter.timer);
    const { answer } = waiter;
    waiter = null;
    answer(batch);
  };
  const wanted = (news: News): boolean => {
    const kind = Object.keys(news)[0]!;
    return allowed.length === 0 ? !ON_REQUEST.includes(kind) : allowed.includes(kind);
  };

  return {
    push: (news: News): Update | null => {
      if (!wanted(news)) return null;
      const update = { update_id: nextId++, ...news } as Update;
      queue.push(update);
      if (world.webhook) void post(world.webhook, update);
      else wake();
      return update;
    },
    /** The same updates once more, under their own numbers (a lost confirmation) or new ones (sent anew by a phone). */
    repeat: (how: 'same-number' | 'new-number', updates: Update[] = delivered): void => {
      if (how === 'new-number') queue.push(...updates.map((update) => ({ ...update, update_id: nextId++ })));
      else queue = [...updates, ...queue.filter((update) => !updates.includes(update))];
      wake();
    },
    /** After a quiet week the numbers begin anew, lower than before. */
    restartNumbers: (from: number): void => {
      nextId = from;
      confirmedUpTo = from - 1;
    },
    listen: (fields: Record<string, unknown>, gone: AbortSignal): Promise<Update[] | 'conflict'> => {
      const offset = Number(fields.offset ?? 0);
      const limit = Math.min(100, Math.max(1, Number(fields.limit ?? 100)));
      if (Array.isArray(fields.allowed_updates)) allowed = fields.allowed_updates as string[];
      if (waiter) {
        clearTimeout(waiter.timer);
        waiter.answer('conflict');
        waiter = null;
      }
      queue = queue.filter((update) => update.update_id >= offset);
      if (offset > 0) confirmedUpTo = Math.max(confirmedUpTo, offset - 1);
      const batch = take(offset, limit);
      const timeoutMs = Number(fields.timeout ?? 0) * 1000;
      if (batch.length > 0 || timeoutMs === 0) return Promise.resolve(batch);
      return new Promise((answer) => {
        const mine: Waiter = {
          answer,
          offset,
          limit,
          timer: setTimeout(() => {
            if (waiter === mine) waiter = null;
            answer([]);
          }, timeoutMs),
        };
        waiter = mine;
        gone.addEventListener('abort', () => {
          clearTimeout(mine.timer);
          if (waiter === mine) waiter = null;
          answer([]);
        });
      });
    },
    /** Whoever listens is cut off by a second program with the same token. */
    conflict: (): void => {
      waiter?.answer('conflict');
      if (waiter) clearTimeout(waiter.timer);
      waiter = null;
    },
    allowed: (): string[] => allowed,
    pending: (): Update[] => queue,
    confirmedUpTo: (): number => confirmedUpTo,
    listening: (): boolean => waiter !== null,
    stop: (): void => {
      if (waiter) clearTimeout(waiter.timer);
      waiter?.answer([]);
      waiter = null;
    },
  };
};

const post = async (
  { url, secret }: { url: string; secret: string | null },
  update: Update,
): Promise<void> => {
  const headers: Record<string, string> = { 'content-type': 'application/json' };
  if (secret !== null) headers['x-telegram-bot-api-secret-token'] = secret;
  await fetch(url, { method: 'POST', headers, body: JSON.stringify(update) });
};
