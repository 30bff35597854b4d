// The channel as a program of its own, for tests that kill it: BOOK, API ROOT and TOKEN are its arguments.
import { pino } from 'pino';
import { startTelegram } from '#channels/telegram';
import { openBook } from '#logbook';
import { plainWords, smallAssistant } from './small-assistant.ts';

const [path, apiRoot, token] = process.argv.slice(2) as [string, string, string];
const book = openBook(path, { now: () => new Date().toISOString() });
const telegram = startTelegram({
  token,
  apiRoot,
  limits: false,
  book,
  receive: smallAssistant(book).receive,
  words: plainWords,
  draw: async () => null,
  make: async () => null,
  log: pino({ level: 'error' }, process.stderr),
  site: book.sites()[0]!.id,
  pollSeconds: 5,
});
process.on('SIGTERM', () => void telegram.stop());
const { why } = await telegram.done;
await telegram.stop();
book.close();
process.exit(why === 'stopped' ? 0 : 1);
