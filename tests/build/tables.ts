/** The tables as program text: `build.ts` puts it where the sources import a table. */
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

/**
 * The program text of a table: a function that reads it when it is first used, and keeps it. A small table stays as it is
 * where its columns would be no smaller.
 */
export function packedTable(table: string, text: string, common: string): string {
  if (table.startsWith(AS_WRITTEN)) {
    const whole = JSON.stringify(JSON.stringify(JSON.parse(text)));
    return `import { lazily } from '${common}/lazily.ts';
export default /* @__PURE__ */ lazily(() => JSON.parse(${whole}));`;
  }
  const rows = shippedRows(table, text);
  const plain = JSON.stringify(rows);
  const packed = JSON.stringify(packList(rows));
  if (!isDeepStrictEqual(unpack(packed), rows)) throw new Error(`the table ${table} does not come back as it was`);
  const isSmall = plain.length < SMALL && gzipped(plain) <= gzipped(packed);
  const read = isSmall ? plain : `unpack(${JSON.stringify(packed)})`;
  return `import { lazily } from '${common}/lazily.ts';
${isSmall ? '' : `import { unpack } from '${common}/unpack.ts';`}
export default /* @__PURE__ */ lazily(() => ${Array.isArray(JSON.parse(text)) ? read : `({ rows: ${read} })`});`;
}
