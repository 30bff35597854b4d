import { type Cell, looksLikeFormula } from './cells.ts';

/**
 * The parts of a workbook as text: SpreadsheetML, transitional.
 * @source ECMA-376, Office Open XML File Formats, part 1 (SpreadsheetML), 5th ed., 2016
 */
const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const SHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** As many rows as a sheet may have, the header among them. */
export const MOST_ROWS = 1_048_576;
const MOST_LETTERS = 32_767;

/** Styles by their place in `cellXfs` below. */
const STYLE = { plain: 0, head: 1, date: 2, number: 3, quoted: 4, wrapped: 5 } as const;

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** Letters that XML 1.0 does not allow are left out; a carriage return stays one. */
const xml = (text: string): string =>
  text
    .replaceAll(
      /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g,
      '',
    )
    .replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign]!)
    .replaceAll('\r', '&#13;');

/** `A`, `Z`, `AA`. */
function columnLetters(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest > 0 ? columnLetters(rest - 1) : '') + String.fromCharCode(65 + (index % 26));
}

/** Days since the last day of 1899, as spreadsheets count them (1900 has a 29 February there: dates before March 1900 stay text). */
function dateSerial(date: string): number | null {
  const serial = Date.parse(`${date.slice(0, 10)}T00:00:00Z`) / 86_400_000 + 25_569;
  return serial > 60 ? serial : null;
}

function cell({ kind, value }: Cell, at: string): string {
  if (value === null || value === '') return '';
  if (typeof value === 'number') return `<c r="${at}" s="${STYLE.number}"><v>${value}</v></c>`;
  const serial = kind === 'date' ? dateSerial(value) : null;
  if (serial !== null) return `<c r="${at}" s="${STYLE.date}"><v>${serial}</v></c>`;
  // Text of its own kind is never a formula; the quote mark keeps it so when somebody edits the cell.
  const style = looksLikeFormula(value) ? STYLE.quoted : value.length > 40 ? STYLE.wrapped : STYLE.plain;
  return `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${xml(value.slice(0, MOST_LETTERS))}</t></is></c>`;
}

export const rowXml = (cells: readonly Cell[], row: number): string =>
  `<row r="${row}">${cells.map((each, i) => cell(each, columnLetters(i) + row)).join('')}</row>`;

const WIDTHS = {
  text: 18,
  word: 14,
  number: 11,
  mass: 12,
  volume: 12,
  temperature: 13,
  length: 11,
  date: 12,
} as const;

export function sheetHead(heads: { head: string; kind: Cell['kind'] }[]): string {
  const cols = heads
    .map(({ head, kind }, i) => {
      const width = Math.max(WIDTHS[kind], Math.min(30, head.length + 3));
      return `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`;
    })
    .join('');
  const row = heads
    .map(
      ({ head }, i) =>
        `<c r="${columnLetters(i)}1" s="${STYLE.head}" t="inlineStr"><is><t>${xml(head)}</t></is></c>`,
    )
    .join('');
  return (
    `${XML}<worksheet xmlns="${MAIN}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>` +
    `<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>` +
    `<sheetFormatPr defaultRowHeight="15"/><cols>${cols}</cols><sheetData><row r="1">${row}</row>`
  );
}

const filterRange = (columns: number, rows: number): string =>
  `A1:${columnLetters(columns - 1)}${Math.max(1, rows)}`;

/** `rows` counts the header. Landscape, as wide as one page, header repeated, page numbers. */
export const sheetTail = (columns: number, rows: number, title: string): string =>
  `</sheetData><autoFilter ref="${filterRange(columns, rows)}"/>` +
  `<pageMargins left="0.4" right="0.4" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>` +
  `<pageSetup paperSize="9" orientation="landscape" fitToWidth="1" fitToHeight="0"/>` +
  // In a footer an ampersand begins a code and stands doubled for itself.
  `<headerFooter><oddFooter>${xml(`&L${title.replaceAll('&', '&&')} · &A&R&P / &N`)}</oddFooter></headerFooter></worksheet>`;

const STYLES =
  `${XML}<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/>` +
  `<numFmt numFmtId="165" formatCode="General"/></numFmts>` +
  `<fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><name val="Arial"/></font></fonts>` +
  `<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>` +
  `<fill><patternFill patternType="solid"><fgColor rgb="FFE7E2D6"/><bgColor indexed="64"/></patternFill></fill></fills>` +
  `<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
  `<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="6">` +
  `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>` +
  `<xf numFmtId="0" fontId="1" fillId="2" borderId="0" xfId="0" applyFont="1" applyFill="1" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf>` +
  `<xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>` +
  `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>` +
  `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" quotePrefix="1"/>` +
  `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf>` +
  `</cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

/** Every part of the workbook but the sheets themselves: path → text. */
export function workbookParts(sheets: { name: string; columns: number; rows: number }[]): [string, string][] {
  const quoted = (name: string): string => `'${xml(name.replaceAll("'", "''"))}'`;
  const absolute = (columns: number, rows: number): string =>
    `$A$1:$${columnLetters(columns - 1)}$${Math.max(1, rows)}`;
  const names = sheets
    .map(
      ({ name, columns, rows }, i) =>
        `<definedName name="_xlnm._FilterDatabase" localSheetId="${i}" hidden="1">${quoted(name)}!${absolute(columns, rows)}</definedName>` +
        `<definedName name="_xlnm.Print_Titles" localSheetId="${i}">${quoted(name)}!$1:$1</definedName>`,
    )
    .join('');
  const list = sheets
    .map(({ name }, i) => `<sheet name="${xml(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
    .join('');
  const relations = sheets
    .map(
      (_, i) =>
        `<Relationship Id="rId${i + 1}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${i + 1}.xml"/>`,
    )
    .join('');
  const types = sheets
    .map(
      (_, i) =>
        `<Override PartName="/xl/worksheets/sheet${i + 1}.xml" ContentType="${SHEET_TYPE}.worksheet+xml"/>`,
    )
    .join('');
  return [
    [
      '[Content_Types].xml',
      `${XML}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
        `<Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${SHEET_TYPE}.sheet.main+xml"/>` +
        `<Override PartName="/xl/styles.xml" ContentType="${SHEET_TYPE}.styles+xml"/>${types}</Types>`,
    ],
    [
      '_rels/.rels',
      `${XML}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ],
    [
      'xl/workbook.xml',
      `${XML}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${list}</sheets><definedNames>${names}</definedNames></workbook>`,
    ],
    [
      'xl/_rels/workbook.xml.rels',
      `${XML}<Relationships xmlns="${PACKAGE}/relationships">${relations}<Relationship Id="rIdStyles" Type="${RELATIONS}/styles" Target="styles.xml"/></Relationships>`,
    ],
    ['xl/styles.xml', STYLES],
  ];
}
