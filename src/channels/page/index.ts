// The page: a small chat in a browser for people with a link and no account, served by the same process.
// Thin: it carries text, buttons and pictures between phones and the assistant; sums and wording are elsewhere.
export { type Link, qrPng, qrText } from './qr.ts';
export { type Page, PortTaken, startPage } from './serve.ts';
export { PAGE_TEXTS } from './texts.ts';
