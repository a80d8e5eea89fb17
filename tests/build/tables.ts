/** The tables as program text: `build.ts` puts it where the sources import a table. */
import { isDeepStrictEqual } from 'node:util';
import { unpack } from '../../src/common/unpack';
import { packList } from './pack';
import { shippedRows } from './shipped';

/** Schemas are not packed: they keep the order of their fields. */
const AS_WRITTEN = 'catalogue/';

/** The program text of a table: a function that reads it when it is first used, and keeps it. */
export function packedTable(table: string, text: string, common: string): string {
  if (table.startsWith(AS_WRITTEN)) {
    const whole = JSON.stringify(JSON.stringify(JSON.parse(text)));
    return `import { lazily } from '${common}/lazily.ts';
export default /* @__PURE__ */ lazily(() => JSON.parse(${whole}));`;
  }
  const rows = shippedRows(table, text);
  const packed = JSON.stringify(packList(rows));
  if (!isDeepStrictEqual(unpack(packed), rows)) throw new Error(`the table ${table} does not come back as it was`);
  const read = `unpack(${JSON.stringify(packed)})`;
  return `import { lazily } from '${common}/lazily.ts';
import { unpack } from '${common}/unpack.ts';
export default /* @__PURE__ */ lazily(() => ${Array.isArray(JSON.parse(text)) ? read : `({ rows: ${read} })`});`;
}
