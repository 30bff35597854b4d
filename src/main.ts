import { Problem, writeError } from './commands/problem.ts';

/** The commands of the program, each in a file of its own, loaded only when asked for. */
const COMMANDS: Record<string, () => Promise<{ run(args: string[]): Promise<number> }>> = {
  start: () => import('./commands/start.ts'),
  read: () => import('./commands/read.ts'),
  replay: () => import('./commands/replay.ts'),
  entries: () => import('./commands/entries.ts'),
  export: () => import('./commands/export.ts'),
  import: () => import('./commands/import.ts'),
  report: () => import('./commands/report.ts'),
  backup: () => import('./commands/backup.ts'),
  restore: () => import('./commands/restore.ts'),
  verify: () => import('./commands/verify.ts'),
};

const [name = 'start', ...args] = process.argv.slice(2);
const load = COMMANDS[name];
try {
  if (!load) throw new Problem(`there is no command "${name}": ${Object.keys(COMMANDS).join(', ')}`);
  // Not process.exit: it would cut off what is still on its way to a pipe.
  process.exitCode = await (await load()).run(args);
} catch (error) {
  process.exitCode = 2;
  writeError(error);
}
