import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Message } from '../stand-in/index.ts';
import { type StandIn, startStandIn } from '../stand-in/index.ts';
import { type Account, accountOf, type Said } from './account.ts';
import { seeded } from './random.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const CLAIM = 'heron-lamp';

/** One running program: `ready` once it listens, `killed` once it is gone without a chance to say goodbye. */
const startProgram = (server: StandIn, path: string) => {
  const child: ChildProcess = spawn(
    process.execPath,
    ['--import', 'tsx', 'src/main.ts', 'start', '--db', path],
    {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: {
        ...process.env,
        BOT_TOKEN: server.token,
        BOT_API_ROOT: server.root,
        BOT_LIMITS: 'off',
        CLAIM_WORD: CLAIM,
      },
    },
  );
  let out = '';
  let errors = '';
  child.stdout!.on('data', (chunk) => {
    out += chunk;
  });
  child.stderr!.on('data', (chunk) => {
    errors += chunk;
  });
  const ended = once(child, 'exit').then(([code, signal]) => ({ code, signal }));
  return {
    child,
    ended,
    errors: () => errors,
    ready: async (): Promise<void> => {
      for (let waitedMs = 0; !/^ready/m.test(out); waitedMs += 20) {
        if (child.exitCode !== null) throw new Error(`the program ended before it was ready: ${errors}`);
        if (waitedMs > 60_000) throw new Error(`the program was never ready: ${errors}`);
        await pause(20);
      }
    },
  };
};

/** What a crew writes: talk, carts, readings, carts that can not be so, and a cart put right afterwards. */
const crew = (server: StandIn, random: () => number) => {
  const ana = server.someone('Ana');
  const ben = server.someone('Ben');
  const group = server.group('Ferry Lane', ana);
  const said: Said[] = [];
  const carts: { message: Message; at: number }[] = [];
  let count = 0;
  const say = (text: string, means: Said['means']): void => {
    const message = server.say(group, random() < 0.5 ? ana : ben, text);
    said.push({ id: String(message.message_id), edit: false, text, means });
    if (means === 'cart') carts.push({ message, at: said.length - 1 });
  };
  return {
    group,
    ana,
    said,
    write: (): void => {
      count += 1;
      const kg = (20 + (count % 600) / 10).toFixed(1);
      const which = random();
      if (which < 0.2) say(`who is bringing coffee on day ${count}`, 'talk');
      else if (which < 0.55) say(`cart ${kg} kg`, 'cart');
      else if (which < 0.75) say(`pile A ${45 + (count % 20)} C`, 'reading');
      else if (which < 0.85) say(`cart ${900 + count} kg`, 'doubt');
      else {
        const last = carts.pop();
        if (!last) {
          say(`cart ${kg} kg`, 'cart');
          return;
        }
        const text = `cart ${(Number(kg) + 0.55).toFixed(2)} kg`;
        server.edit(last.message, text);
        said.push({ id: String(last.message.message_id), edit: true, text, means: 'edit' });
      }
    },
  };
};

/**
 * Kills the program `kills` times at moments that the seed decides, while people write; then lets it run until
 * everything has gone out, and says what is in the book and what the people saw.
 */
export const killOften = async (how: {
  kills: number;
  seed: number;
  path: string;
  tell?: (line: string) => void;
}): Promise<Account> => {
  const random = seeded(how.seed);
  const server = await startStandIn();
  let program = startProgram(server, how.path);
  try {
    await program.ready();
    const people = crew(server, random);
    server.say(people.group, people.ana, `/start ${CLAIM}`);
    await server.sentTo(people.group);
    await server.settled();
    const problems: string[] = [];
    let killed = 0;
    while (killed < how.kills) {
      // A fifth of them die while they still start; the rest somewhere in the middle of their work.
      if (random() < 0.2) await pause(random() * 1200);
      else await program.ready();
      const writing = Math.floor(random() * 12);
      for (let left = writing; left > 0; left -= 1) {
        people.write();
        if (random() < 0.5) await pause(random() * 40);
      }
      await pause(random() * 120);
      program.child.kill('SIGKILL');
      const { signal } = await program.ended;
      if (signal !== 'SIGKILL') problems.push(`ended by itself: ${program.errors()}`);
      killed += 1;
      // Some of what is written comes while nobody listens.
      for (let left = Math.floor(random() * 3); left > 0; left -= 1) people.write();
      if (killed % 20 === 0) how.tell?.(`${killed} kills, ${people.said.length} messages`);
      program = startProgram(server, how.path);
    }
    await program.ready();
    await server.until('everything confirmed', () => server.updates.pending().length === 0, 60_000);
    let before = -1;
    // Whatever waits in the outbox goes out within moments; quiet for two seconds is the end of it.
    for (; before !== server.world.sent.length; await pause(2000)) before = server.world.sent.length;
    program.child.kill('SIGTERM');
    const { code } = await program.ended;
    if (code !== 0) problems.push(`the last one ended with ${code}: ${program.errors()}`);
    return { kills: killed, ...accountOf(server, people.group, people.said, how.path, problems) };
  } finally {
    program.child.kill('SIGKILL');
    await server.close();
  }
};
