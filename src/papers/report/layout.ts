import { createRequire } from 'node:module';
import type PdfDocument from 'pdfkit';

export const MARGIN = 50;
const TEXT_PT = 9;
/** Pictures stand two side by side. */
const GAP_PT = 15;

export type Doc = InstanceType<typeof PdfDocument>;

const fontAt = (name: string): string =>
  createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/** Fonts of our own: those that every PDF has know neither every accent nor `₂`. */
export function useFonts(doc: Doc): void {
  doc.registerFont('plain', fontAt('DejaVuSans'));
  doc.registerFont('bold', fontAt('DejaVuSans-Bold'));
}

const widthOf = (doc: Doc): number => doc.page.width - 2 * MARGIN;
const roomLeft = (doc: Doc): number => doc.page.height - MARGIN - doc.y;

/** Begins a new page where what stands together would be torn apart. */
export function keepTogether(doc: Doc, height: number): void {
  if (roomLeft(doc) < height) doc.addPage();
}

export function heading(doc: Doc, text: string): void {
  keepTogether(doc, 90);
  doc.moveDown(1).font('bold').fontSize(12).fillColor('#000000').text(text, MARGIN).moveDown(0.3);
}

export function paragraph(doc: Doc, text: string, strong = false): void {
  doc
    .font(strong ? 'bold' : 'plain')
    .fontSize(TEXT_PT)
    .fillColor('#000000')
    .text(text, MARGIN)
    .moveDown(0.4);
}

export type Columns = readonly (readonly [head: string, share: number, side?: 'right'])[];

/** Rows stay whole; the head is repeated on each page, and never stands alone at the foot of one. */
export function table(doc: Doc, columns: Columns, rows: readonly (readonly string[])[], none = ''): void {
  if (rows.length === 0) {
    if (none) paragraph(doc, none);
    return;
  }
  const width = widthOf(doc);
  const widths = columns.map(([, share]) => share * width - 8);
  const style = (strong: boolean) =>
    doc
      .font(strong ? 'bold' : 'plain')
      .fontSize(TEXT_PT)
      .fillColor('#000000');
  const heightOf = (cells: readonly string[], strong: boolean): number => {
    style(strong);
    return Math.max(...cells.map((cell, i) => doc.heightOfString(cell, { width: widths[i]! }))) + 4;
  };
  const heads = columns.map(([head]) => head);
  const headHeight = heightOf(heads, true);
  const draw = (cells: readonly string[], strong: boolean, height: number): void => {
    style(strong);
    const top = doc.y;
    let left = MARGIN;
    for (const [i, cell] of cells.entries()) {
      const [, share, side = 'left'] = columns[i]!;
      doc.text(cell, left, top, { width: widths[i]!, align: side });
      left += share * width;
    }
    doc.y = top + height;
    doc
      .moveTo(MARGIN, doc.y - 3)
      .lineTo(MARGIN + width, doc.y - 3)
      .lineWidth(strong ? 0.8 : 0.25)
      .strokeColor('#999999')
      .stroke();
  };
  keepTogether(doc, headHeight + heightOf(rows[0]!, false));
  draw(heads, true, headHeight);
  for (const row of rows) {
    const height = heightOf(row, false);
    if (roomLeft(doc) < height) {
      doc.addPage();
      draw(heads, true, headHeight);
    }
    draw(row, false, height);
  }
  doc.x = MARGIN;
  doc.moveDown(0.5);
}

export type Drawn = { png: Uint8Array; alt: string };

/**
 * Height over width of a PNG.
 * @source ISO/IEC 15948:2004 (PNG), 11.2.2 (IHDR: width and height are the first two numbers of the first chunk)
 */
const tallness = (png: Buffer): number => png.readUInt32BE(20) / png.readUInt32BE(16);

/** Pictures two by two, each with what it shows in words for whoever cannot see it. */
export function pictures(doc: Doc, drawn: readonly Drawn[]): void {
  const width = (widthOf(doc) - GAP_PT) / 2;
  for (let i = 0; i < drawn.length; i += 2) {
    const row = drawn.slice(i, i + 2).map(({ png, alt }) => {
      const image = Buffer.from(png);
      return { image, alt, height: tallness(image) * width };
    });
    const height = Math.max(...row.map((each) => each.height));
    keepTogether(doc, height + GAP_PT);
    const top = doc.y;
    for (const [at, { image, alt }] of row.entries()) {
      const figure = doc.struct('Figure', { alt }, () => {
        doc.image(image, MARGIN + at * (width + GAP_PT), top, { width });
      });
      doc.addStructure(figure);
    }
    doc.x = MARGIN;
    doc.y = top + height + GAP_PT / 2;
  }
}

/** Who and when, and the page, at the foot of every page. */
export function pageFeet(doc: Doc, left: string, pageOf: (page: number, of: number) => string): number {
  const { count } = doc.bufferedPageRange();
  for (let page = 0; page < count; page++) {
    doc.switchToPage(page);
    // In the lower margin: the document would begin a new page for it otherwise.
    doc.page.margins.bottom = 0;
    doc.font('plain').fontSize(8).fillColor('#555555');
    const y = doc.page.height - 35;
    doc.text(left, MARGIN, y, { width: widthOf(doc) * 0.8, lineBreak: false, ellipsis: true });
    doc.text(pageOf(page + 1, count), MARGIN, y, { width: widthOf(doc), align: 'right', lineBreak: false });
  }
  return count;
}
