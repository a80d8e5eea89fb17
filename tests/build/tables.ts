/** The tables as program text: `build.ts` puts it where the sources import a table. */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { gzipSync } from 'node:zlib';
import { unpack } from '../../src/common/unpack';
import { packList } from './pack';
import { shippedRows } from './shipped';

/** Schemas are not packed: they keep the order of their fields. */
const AS_WRITTEN = 'catalogue/';

/** A longer table is read faster as one text. */
const SMALL = 4000;
const gzipped = (text: string): number => gzipSync(text).length;

/** A table as program text, and the parts that it reads where its own text would be too long for one file. */
export interface TableProgram {
  readonly program: string;
  /** The program text of each part, by its path: that of the table, and a number. */
  readonly parts: ReadonlyMap<string, string>;
}

/**
 * The program of a table: a function that reads it when it is first used, and keeps it; in parts of at most `most` signs.
 * A small table stays as it is where its columns would be no smaller.
 */
export function packedTable(
  path: string,
  table: string,
  common: string,
  most = Number.POSITIVE_INFINITY,
): TableProgram {
  const text = readFileSync(path, 'utf8');
  if (table.startsWith(AS_WRITTEN)) return inParts(path, common, JSON.stringify(JSON.parse(text)), most, 'JSON.parse');
  const rows = shippedRows(table, text);
  const plain = JSON.stringify(rows);
  const packed = JSON.stringify(packList(rows));
  if (!isDeepStrictEqual(unpack(packed), rows)) throw new Error(`the table ${table} does not come back as it was`);
  const asTable = (read: string): string => (Array.isArray(JSON.parse(text)) ? read : `({ rows: ${read} })`);
  if (plain.length < SMALL && gzipped(plain) <= gzipped(packed))
    return {
      program: `import { lazily } from '${common}/lazily.ts';
export default /* @__PURE__ */ lazily(() => ${asTable(plain)});`,
      parts: new Map(),
    };
  return inParts(path, common, packed, most, 'unpack', asTable);
}

/** A long text that a function reads, in parts. */
function inParts(
  path: string,
  common: string,
  whole: string,
  most: number,
  reader: 'unpack' | 'JSON.parse',
  asTable = (read: string): string => read,
): TableProgram {
  const texts: string[] = [];
  for (let from = 0; from < whole.length; from += most) texts.push(JSON.stringify(whole.slice(from, from + most)));
  const several = texts.length > 1;
  const parts = new Map(several ? texts.map((part, at) => [`${path}?${at}`, `export default ${part};`]) : []);
  const read = `${reader}(${several ? texts.map((_, at) => `part${at}`).join(' + ') : texts[0]})`;
  const program = [
    `import { lazily } from '${common}/lazily.ts';`,
    ...(reader === 'unpack' ? [`import { unpack } from '${common}/unpack.ts';`] : []),
    ...[...parts.keys()].map((part, at) => `import part${at} from '${part}';`),
    `export default /* @__PURE__ */ lazily(() => ${asTable(read)});`,
  ];
  return { program: program.join('\n'), parts };
}
