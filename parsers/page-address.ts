import type { Request } from '#records';
import type { Plain } from './text.ts';

/** `set page address https://…`, in any language of the reader: a whole message, since an address is full of dots. */
const SAID =
  /^\s*(?:set|fixe[rz]?|mets|mettre|régler?|regler?|pon(?:er)?|fija(?:r)?)\s+(?:the\s+|la\s+|l['’]\s*)?(?:page address|adresse de la page|direcci[oó]n de la p[aá]gina)\s*(?:to|à|a|:|=)?\s*(\S+)\s*$/iu;

/**
 * Reads where phones reach the page, as it was typed; whether it can be an address is judged where it is set.
 * Null where the message says something else.
 * @example readPageAddress('set page address https://heap.example.org') // { request: 'setting', name: 'page-address', … }
 */
export function readPageAddress(message: Plain): Request | null {
  const value = SAID.exec(message.text)?.[1];
  return value ? { request: 'setting', name: 'page-address', value, said: message.text.trim() } : null;
}
