/** The tables as program text: `build.ts` puts it where the sources import a table. */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { unpack } from '../../src/common/unpack';
import { packList } from './pack';
import { shippedRows } from './shipped';

/** A table as program text, and the parts that it reads where its own text would be too long for one file. */
export interface TableProgram {
  readonly program: string;
  /** The program text of each part, by its path: that of the table, and a number. */
  readonly parts: ReadonlyMap<string, string>;
}

/** The program of a table: a function that reads it when it is first used, and keeps it; in parts of at most `most` signs. */
export function packedTable(
  path: string,
  table: string,
  common: string,
  most = Number.POSITIVE_INFINITY,
): TableProgram {
  const text = readFileSync(path, 'utf8');
  const rows = shippedRows(table, text);
  const packed = JSON.stringify(packList(rows));
  if (!isDeepStrictEqual(unpack(packed), rows)) throw new Error(`the table ${table} does not come back as it was`);
  const texts: string[] = [];
  for (let from = 0; from < packed.length; from += most) texts.push(JSON.stringify(packed.slice(from, from + most)));
  const inParts = texts.length > 1;
  const parts = new Map(inParts ? texts.map((part, at) => [`${path}?${at}`, `export default ${part};`]) : []);
  const read = `unpack(${inParts ? texts.map((_, at) => `part${at}`).join(' + ') : texts[0]})`;
  const program = [
    `import { lazily } from '${common}/lazily.ts';`,
    `import { unpack } from '${common}/unpack.ts';`,
    ...[...parts.keys()].map((part, at) => `import part${at} from '${part}';`),
    `export default /* @__PURE__ */ lazily(() => ${Array.isArray(JSON.parse(text)) ? read : `({ rows: ${read} })`});`,
  ];
  return { program: program.join('\n'), parts };
}
