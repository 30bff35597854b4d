import type { PictureSpec } from '#assistant';

/** Draws what a picture shows, when it is sent; null where nothing here can, and its words must do. */
export async function draws(picture: PictureSpec): Promise<Uint8Array | null> {
  if (picture.draw !== 'share') return null;
  const { qrPng } = await import('#channels/page');
  return qrPng(picture.data);
}

/** The same for a terminal that shows characters alone. */
export async function drawAsText(picture: PictureSpec): Promise<string | null> {
  if (picture.draw !== 'share') return null;
  const { qrText } = await import('#channels/page');
  return qrText(picture.data);
}
