// What goes out and comes in as files: backups of the log book, the workbook, CSV, the report, old logs.
// Reads through the log book's own face; sums are core's and words are wording's.
export { type Backup, backupInto, backupsIn, isBackupDue } from './backups.ts';
export { ALWAYS, type Exported, exportBook, SHEET_ORDER } from './export.ts';
export { addKept, addLines, countNew, undoImport } from './import/import.ts';
export { beginsAsKept, FILE_FAULTS, readFile, readKeptLines } from './import/read-file.ts';
export { type LineIn, readTable, type TableFor } from './import/read-table.ts';
export type { KeptLine } from './kept-line.ts';
export { type ReportFacts, reportFacts } from './report/facts.ts';
export { writeReport } from './report/report.ts';
export { restoreBook } from './restore.ts';
export { EXPORT_FORMATS, type ExportFormat } from './sinks.ts';
