import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Board, Reply, Said } from '../wire.ts';

/** One thing written on this phone, with what came back. */
export type Slip = {
  n: number;
  key: string;
  /** Null until it is known which site this phone writes to. */
  site: number | null;
  text: string;
  typedAt: number;
  state: 'waiting' | 'sent' | 'too-old' | 'refused';
  choose?: Said['choose'];
  ask?: Said['ask'];
  replies: Reply[];
};

export type Kept = {
  phone?: string;
  token?: string;
  site?: number;
  /** Null once it was asked and skipped. */
  name?: string | null;
  language?: string;
  board?: Board;
};

interface Shape extends DBSchema {
  slips: { key: number; value: Omit<Slip, 'n'> & { n?: number } };
  kept: { key: string; value: unknown };
}

export type Store = {
  /** False where the browser keeps nothing: a private window, a full disk. */
  lasting: boolean;
  kept(): Promise<Kept>;
  keep(what: Kept): Promise<void>;
  slips(): Promise<Slip[]>;
  add(slip: Omit<Slip, 'n'>): Promise<Slip>;
  put(slip: Slip): Promise<void>;
};

/** What is sent and answered stays for a look back; no more than this. */
const SHOWN = 80;

export async function openStore(): Promise<Store> {
  try {
    const db = await openDB<Shape>('site-log', 1, {
      upgrade: (made) => {
        made.createObjectStore('slips', { keyPath: 'n', autoIncrement: true });
        made.createObjectStore('kept');
      },
    });
    return onDisk(db);
  } catch {
    return inMemory();
  }
}

function onDisk(db: IDBPDatabase<Shape>): Store {
  return {
    lasting: true,
    kept: async () => {
      const keys = await db.getAllKeys('kept');
      const values = await db.getAll('kept');
      return Object.fromEntries(keys.map((key, i) => [key, values[i]])) as Kept;
    },
    keep: async (what) => {
      const work = db.transaction('kept', 'readwrite');
      for (const [key, value] of Object.entries(what)) void work.store.put(value, key);
      await work.done;
    },
    slips: async () => {
      const all = (await db.getAll('slips')) as Slip[];
      const old = all.filter(({ state }) => state !== 'waiting').slice(0, -SHOWN);
      for (const { n } of old) await db.delete('slips', n);
      return all.filter((slip) => !old.includes(slip));
    },
    add: async (slip) => ({ ...slip, n: await db.add('slips', slip) }),
    put: async (slip) => {
      await db.put('slips', slip);
    },
  };
}

function inMemory(): Store {
  const kept: Kept = {};
  const slips: Slip[] = [];
  return {
    lasting: false,
    kept: async () => kept,
    keep: async (what) => {
      Object.assign(kept, what);
    },
    slips: async () => slips.slice(),
    add: async (slip) => {
      const made = { ...slip, n: slips.length + 1 };
      slips.push(made);
      return made;
    },
    put: async (slip) => {
      slips[slip.n - 1] = slip;
    },
  };
}
