import { z } from 'zod';

/** What a `share` picture holds, as the outbox keeps it until it is sent. */
export const Link = z.object({ link: z.string(), token: z.string() });
export type Link = z.infer<typeof Link>;

/** The code as a picture: dark on white with its quiet zone, large enough to be scanned from a printed sheet. */
export async function qrPng(data: unknown): Promise<Uint8Array> {
  const { default: qrcode } = await import('qrcode');
  return qrcode.toBuffer(Link.parse(data).link, {
    type: 'png',
    scale: 12,
    margin: 4,
    errorCorrectionLevel: 'M',
  });
}

/** The code in characters, for a terminal. */
export async function qrText(data: unknown): Promise<string> {
  const { default: qrcode } = await import('qrcode');
  return qrcode.toString(Link.parse(data).link, { type: 'utf8', errorCorrectionLevel: 'L' });
}
