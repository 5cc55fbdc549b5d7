import { crc32 } from 'node:zlib';
import { columnName } from '../../src/importing/mapping/import-map.ts';

/** A cell as a workbook holds it: a text, a number, a formula with the value that was kept, or nothing. */
export type WorkbookCell = string | number | null | { readonly formula: string; readonly value: string };

/** A workbook with these sheets, rows under their numbers, as the bytes of an .xlsx file. */
export function workbook(
  sheets: Readonly<Record<string, readonly (readonly WorkbookCell[])[]>>,
  merged = '',
): Buffer {
  const names = Object.keys(sheets);
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const types = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  return zip({
    '[Content_Types].xml': `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/>${names.map((_, at) => `<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${types}.worksheet+xml"/>`).join('')}</Types>`,
    '_rels/.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets>${names.map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${names.map((_, at) => `<Relationship Id="rId${at + 1}" Type="${relations}/worksheet" Target="worksheets/sheet${at + 1}.xml"/>`).join('')}</Relationships>`,
    ...Object.fromEntries(
      Object.values(sheets).map((rows, at) => [
        `xl/worksheets/sheet${at + 1}.xml`,
        `<worksheet xmlns="${main}"><sheetData>${rows.map(rowXml).join('')}</sheetData>${merged === '' ? '' : `<mergeCells count="1"><mergeCell ref="${merged}"/></mergeCells>`}</worksheet>`,
      ]),
    ),
  });
}

const rowXml = (cells: readonly WorkbookCell[], row: number): string =>
  `<row r="${row + 1}">${cells.map((cell, at) => cellXml(cell, `${columnName(at)}${row + 1}`)).join('')}</row>`;

function cellXml(cell: WorkbookCell, at: string): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === 'object') return `<c r="${at}" t="str"><f>${cell.formula}</f><v>${cell.value}</v></c>`;
  const text = cell.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<c r="${at}" t="inlineStr"><is><t>${text}</t></is></c>`;
}

/** Files packed into one without being made smaller. `size`: what the directory says of each; else the truth. */
export function zip(files: Readonly<Record<string, string>>, size?: number): Buffer {
  const pieces: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const [name, text] of Object.entries(files)) {
    const content = Buffer.from(text);
    const head = Buffer.alloc(26);
    head.writeUInt16LE(20, 0);
    head.writeUInt32LE(crc32(content), 10);
    head.writeUInt32LE(content.length, 14);
    head.writeUInt32LE(size ?? content.length, 18);
    head.writeUInt16LE(Buffer.byteLength(name), 22);
    const local = Buffer.concat([Buffer.from('PK\u0003\u0004'), head, Buffer.from(name), content]);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(offset, 10);
    directory.push(
      Buffer.concat([Buffer.from('PK\u0001\u0002'), Buffer.from([20, 0]), head, tail, Buffer.from(name)]),
    );
    pieces.push(local);
    offset += local.length;
  }
  const list = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.write('PK\u0005\u0006', 0, 'latin1');
  end.writeUInt16LE(directory.length, 8);
  end.writeUInt16LE(directory.length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...pieces, list, end]);
}
