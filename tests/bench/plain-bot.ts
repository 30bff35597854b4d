// The plainest bot there can be, to measure against: one row made durable for each message, and the text sent back.
import Database from 'better-sqlite3';
import { Bot } from 'grammy';

const [path, apiRoot, token] = process.argv.slice(2) as [string, string, string];
const book = new Database(path);
book.pragma('journal_mode = WAL');
book.pragma('synchronous = FULL');
book.exec('CREATE TABLE said (id INTEGER PRIMARY KEY, chat TEXT, text TEXT, at TEXT) STRICT');
const insert = book.prepare('INSERT INTO said (chat, text, at) VALUES (?, ?, ?)');
const bot = new Bot(token, { client: { apiRoot } });
bot.on('message:text', async (ctx) => {
  insert.run(String(ctx.chat.id), ctx.msg.text, new Date().toISOString());
  await ctx.reply(ctx.msg.text, { reply_parameters: { message_id: ctx.msg.message_id } });
});
process.on('SIGTERM', () => void bot.stop());
await bot.start({ allowed_updates: ['message', 'edited_message', 'callback_query', 'my_chat_member'] });
book.close();
