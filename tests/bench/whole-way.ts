// The whole way of a message, from the messenger's server and back to it, beside the plainest bot on the same way.
import { type ChildProcess, spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { type StandIn, startStandIn } from '../stand-in/index.ts';
import { byTurns, type Row, rate, times } from './rows.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const MESSAGES = 300;
const ROUNDS = 7;
/** What a crew types in a busy day: each has one answer. */
const SAID = [
  ...[
    'cart 61.5',
    'chips 12',
    'cart 66 from west kitchen',
    'chips 2 barrows',
    'B 41 43 39',
    'C 55',
    'cart 58',
  ],
  ...['turned B', 'C 54', 'covered B', 'cart 70.5', 'chips 12', 'drum 56', 'emptied drum onto C, 300 kg'],
  'ambient 12',
];
const DAY_MS = 86_400_000;
const FIRST = Date.parse('2025-03-03T07:00:00Z');

type Side = { server: StandIn; flood(): Promise<void>; stop(): void };

const side = async (
  args: (server: StandIn) => string[],
  environment: (server: StandIn) => Record<string, string>,
  letIn: string | null,
): Promise<Side> => {
  const server = await startStandIn();
  const child: ChildProcess = spawn(process.execPath, ['--import', 'tsx', ...args(server)], {
    cwd: ROOT,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, ...environment(server) },
  });
  const ana = server.someone('Ana');
  const group = server.group('Ferry Lane', ana);
  await server.until(
    'listens',
    () => server.world.calls.some((call) => call.method === 'getUpdates'),
    60_000,
  );
  if (letIn) {
    server.say(group, ana, letIn);
    await server.sentTo(group);
  }
  let said = 0;
  const flood = async (): Promise<void> => {
    const before = server.world.sent.length;
    for (let i = 0; i < MESSAGES; i += 1) {
      const [day, place] = [Math.floor(said / SAID.length), said % SAID.length];
      server.say(group, ana, SAID[place]!, { date: new Date(FIRST + day * DAY_MS + place * 900_000) });
      said += 1;
    }
    await server.until('all answered', () => server.world.sent.length >= before + MESSAGES, 120_000);
  };
  return {
    server,
    flood,
    stop: () => void child.kill('SIGKILL'),
  };
};

export async function wholeWay(folder: string): Promise<Row[]> {
  const ours = await side(
    () => [
      'src/main.ts',
      'start',
      '--no-page',
      '--db',
      join(folder, 'ours.db'),
      '--site',
      'fixtures/sites/hospital.json',
    ],
    (server) => ({
      BOT_TOKEN: server.token,
      BOT_API_ROOT: server.root,
      BOT_LIMITS: 'off',
      CLAIM_WORD: 'heron-lamp',
    }),
    '/start heron-lamp',
  );
  const plain = await side(
    (server) => ['tests/bench/plain-bot.ts', join(folder, 'plain.db'), server.root, server.token],
    () => ({}),
    null,
  );
  const [mine, theirs] = await byTurns(ROUNDS, ours.flood, plain.flood);
  for (const each of [ours, plain]) {
    each.stop();
    await each.server.close();
  }
  return [
    {
      what: 'whole way of a message, beside the plainest bot',
      ours: rate((MESSAGES * 1000) / mine),
      beside: rate((MESSAGES * 1000) / theirs),
      ratio: times(theirs / mine),
      aim: '≥ 0.8',
    },
  ];
}
