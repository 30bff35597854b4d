import type { IncomingMessage } from 'node:http';

export type Upload = { name: string; bytes: Buffer };
export type Body = { fields: Record<string, unknown>; files: Record<string, Upload> };

/** The fields of a call, sent as JSON or as a form with files. */
export const readBody = async (request: IncomingMessage): Promise<Body> => {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const bytes = Buffer.concat(chunks);
  const type = request.headers['content-type'] ?? '';
  if (bytes.length === 0) return { fields: {}, files: {} };
  if (type.startsWith('application/json')) return { fields: JSON.parse(bytes.toString('utf8')), files: {} };
  const boundary = /boundary=(?:"([^"]+)"|([^;]+))/.exec(type);
  if (boundary) return form(bytes, boundary[1] ?? boundary[2]!);
  return { fields: Object.fromEntries(new URLSearchParams(bytes.toString('utf8'))), files: {} };
};

const form = (bytes: Buffer, boundary: string): Body => {
  const body: Body = { fields: {}, files: {} };
  const mark = Buffer.from(`--${boundary}`);
  let at = bytes.indexOf(mark);
  while (at >= 0) {
    const next = bytes.indexOf(mark, at + mark.length);
    if (next < 0) break;
    const part = bytes.subarray(at + mark.length + 2, next - 2);
    const split = part.indexOf('\r\n\r\n');
    const head = part.subarray(0, split).toString('utf8');
    const content = part.subarray(split + 4);
    const name = /name="([^"]*)"/i.exec(head)?.[1] ?? '';
    const file = /filename="?([^";\r\n]*)"?/i.exec(head)?.[1];
    if (file !== undefined) body.files[name] = { name: file, bytes: Buffer.from(content) };
    else body.fields[name] = jsonOrText(content.toString('utf8'));
    at = next;
  }
  return body;
};

const jsonOrText = (text: string): unknown => {
  try {
    const value = JSON.parse(text) as unknown;
    return typeof value === 'number' && String(value) !== text ? text : value;
  } catch {
    return text;
  }
};
