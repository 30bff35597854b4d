// The conversation over Telegram: updates become messages for the assistant, replies leave the outbox.
// Thin: no sums and no wording of its own.
export { COMMANDS, COORDINATOR_COMMANDS } from './commands.ts';
export { NOTICES, type Notice } from './notices.ts';
export type { Telegram, TelegramEnd, TelegramOptions } from './options.ts';
export { startTelegram, telegramHomes } from './start.ts';
export { isWebhookSecret, type WebhookOptions } from './webhook.ts';
