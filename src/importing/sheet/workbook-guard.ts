import { inflateRawSync } from 'node:zlib';
import { UnreadableSheet } from './unreadable-sheet.ts';

const MOST_UNPACKED = 100 * 1024 * 1024;
const MOST_CELLS = 3_000_000;
const DIRECTORY_END = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const BROKEN = 'expected a workbook that a spreadsheet program can open: save it once more';

/**
 * Refuses a workbook that would fill the memory: one that unpacks to more than it says or than is sensible, or a sheet in
 * which a single cell far out makes millions of empty ones. Throws an UnreadableSheet.
 */
export function guardWorkbook(bytes: Buffer): void {
  let total = 0;
  for (const entry of entriesOf(bytes)) {
    total += entry.size;
    if (total > MOST_UNPACKED)
      throw new UnreadableSheet('the workbook unpacks to more than 100 MB', 'expected a smaller one');
    const unpacked = unpack(bytes, entry);
    if (/worksheets\/[^/]+\.xml$/.test(entry.name)) guardExtent(unpacked.toString('utf8'));
  }
}

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packed: number;
  readonly size: number;
  readonly offset: number;
}

function entriesOf(bytes: Buffer): readonly Entry[] {
  const end = endOfDirectory(bytes);
  if (end === null) throw new UnreadableSheet('the workbook is cut off or broken', BROKEN);
  const entries: Entry[] = [];
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left -= 1) {
    if (at + 46 > bytes.length || bytes.readUInt32LE(at) !== DIRECTORY_ENTRY)
      throw new UnreadableSheet('the workbook is cut off or broken', BROKEN);
    const lengths = [28, 30, 32].map((offset) => bytes.readUInt16LE(at + offset));
    const [name = 0, extra = 0, comment = 0] = lengths;
    entries.push({
      name: bytes.toString('utf8', at + 46, at + 46 + name),
      method: bytes.readUInt16LE(at + 10),
      packed: bytes.readUInt32LE(at + 20),
      size: bytes.readUInt32LE(at + 24),
      offset: bytes.readUInt32LE(at + 42),
    });
    at += 46 + name + extra + comment;
  }
  return entries;
}

function endOfDirectory(bytes: Buffer): number | null {
  // a comment of at most 65 535 bytes may follow
  for (let at = bytes.length - 22; at >= Math.max(0, bytes.length - 22 - 65_535); at -= 1) {
    if (bytes.readUInt32LE(at) === DIRECTORY_END) return at;
  }
  return null;
}

function unpack(bytes: Buffer, { method, packed, size, offset }: Entry): Buffer {
  if (offset + 30 > bytes.length) throw new UnreadableSheet('the workbook is cut off or broken', BROKEN);
  const begin = offset + 30 + bytes.readUInt16LE(offset + 26) + bytes.readUInt16LE(offset + 28);
  const content = bytes.subarray(begin, begin + packed);
  if (method === 0 || size === 0) return content;
  try {
    return inflateRawSync(content, { maxOutputLength: size });
  } catch {
    throw new UnreadableSheet('the workbook does not unpack to what it says', BROKEN);
  }
}

function guardExtent(sheet: string): void {
  let [rows, columns] = [0, 0];
  for (const [, letters = '', row = ''] of sheet.matchAll(/\sr=["']([A-Z]{0,7})(\d{1,12})["']/g)) {
    rows = Math.max(rows, Number(row));
    columns = Math.max(
      columns,
      [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0),
    );
  }
  if (rows * Math.max(1, columns) > MOST_CELLS) {
    const found = `a sheet reaches to row ${rows} and column ${columns}`;
    throw new UnreadableSheet(found, 'expected a list: delete what stands far out, or save the list alone');
  }
}
