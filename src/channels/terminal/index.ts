// The chat in the terminal: a line typed is a message, a reply is printed. Keyboard and pipe alike.
// Thin: it carries text; sums and wording are elsewhere.
export { startTerminal, type Terminal } from './terminal.ts';
