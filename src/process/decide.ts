/** From a food in a form to the printed line that holds for it in a jar, a canner and a place; or why none does. */
import { fail } from '../errors/StillroomError';
import { formName } from '../foods/tables';
import { formatQuantity } from '../quantity/formatQuantity';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { basisOf } from '../sources/table';
import { capacityOf, listedSize, type ReadJar } from '../words/jar';
import type { CanningMethod } from '../words/method';
import { type AnyPack, PACKS } from '../words/pack';
import { bandIndex, bandsOf, thinAir } from './bands';
import { ruleBasis, ruleFigures } from './canningRules';
import { processCaution } from './cautions';
import { type Cell, cellOf, chooseCell, type WantedLine } from './cells';
import { type FormChoice, type KnownFood, refusedChoice, rowsOfChoice } from './food';
import type { Refused } from './refusal';
import { LISTED_JARS, type ListedJar, type NotRecommendedRow, type PrintedMethod, type ProcessRow } from './tables';

/** The line that is served, those printed with it, and the listed jar size it is printed for. */
export interface Served {
  readonly cell: Cell;
  readonly cells: readonly Cell[];
  readonly size: ListedJar;
  /** Whether the pack was left open and only one is tested. */
  readonly onlyPack: boolean;
}
export interface Question extends WantedLine {
  readonly method: CanningMethod;
  readonly pack?: AnyPack | undefined;
  readonly jar: ReadJar;
  readonly elevation: Quantity<'length'>;
}

export const packOf = (row: ProcessRow): AnyPack => row.pack ?? 'not stated';
export const packsOf = (rows: readonly ProcessRow[]) =>
  PACKS.filter((pack) => rows.some((row) => packOf(row) === pack));
const sizesOf = (rows: readonly ProcessRow[]) =>
  LISTED_JARS.filter((size) => rows.some((row) => row.jars.includes(size)));

/** Whether a food and form is low in acid: it has pressure processes at 10 psi or more, and none in boiling water. */
export const isLowAcid = (rows: readonly ProcessRow[]): boolean =>
  rows.every((row) => row.method !== 'boiling-water' && (row.psi ?? []).every((psi) => psi === null || psi >= 10));

/** The method whose rows a canner goes by: a steam canner borrows those of boiling water. */
export const printedMethod = (method: CanningMethod): PrintedMethod =>
  method === 'atmospheric-steam' ? 'boiling-water' : method;

export const notCannedRow = (row: NotRecommendedRow): Refused => ({
  code: 'not canned',
  text: row.reason,
  notCanned: row,
  basis: [basisOf(row, 'reason', row.quality === true ? 'not recommended, for quality' : 'not recommended')],
});
const isRefused = (found: object): found is Refused => 'code' in found;

/** A food in the form of a choice, in words: `fig (whole)`. */
const said = (food: KnownFood, choice: FormChoice): string => `${food.name} (${formName(choice.form)})`;

function rowsOfMethod(food: KnownFood, choice: FormChoice, method: CanningMethod): readonly ProcessRow[] | Refused {
  const all = rowsOfChoice(choice);
  const printed = printedMethod(method);
  const rows = all.filter((row) => row.method === printed);
  if (rows.length > 0) return rows;
  const lowAcid = isLowAcid(all);
  const spores = printed === 'boiling-water' && lowAcid;
  return {
    code: spores ? 'low in acid' : 'no process',
    text: spores
      ? `${said(food, choice)} is low in acid: boiling water does not destroy the spores of botulism in it, and only pressure processes for it are in these tables`
      : `no tested ${method} process for ${said(food, choice)} is in these tables`,
    cautions: lowAcid ? [processCaution('low-acid-botulism')] : [],
    basis: all.slice(0, 1).map((row) => basisOf(row, 'reason', 'canners that are tested')),
  };
}

function rowsOfPack(food: KnownFood, choice: FormChoice, rows: readonly ProcessRow[], pack: string) {
  const found = rows.filter((row) => packOf(row) === pack);
  if (found.length > 0) return found;
  const known = refusedChoice(food, choice).find((row) => row.pack === pack);
  if (known !== undefined) return notCannedRow(known);
  return {
    code: 'no such pack',
    text: `no process for ${said(food, choice)} in a ${pack} pack is in these tables for this canner`,
  } satisfies Refused;
}

/** Where jars come in other sizes than these, how large they may be. */
const othersUpTo = ({ size, volume: { unit } }: ReadJar, largest: string): string =>
  size === undefined
    ? `, or others of at most ${formatQuantity(quantityIn(valueIn(capacityOf(largest), 'mL'), 'mL', unit), { rounding: 'down' })}`
    : '';

function sizeFor(food: KnownFood, choice: FormChoice, rows: readonly ProcessRow[], { jar, method }: Question) {
  const sizes = sizesOf(rows);
  const size = listedSize(jar, sizes);
  if (size !== undefined) return size;
  const known = refusedChoice(food, choice).find((row) => row.jar === jar.name);
  if (known !== undefined) return notCannedRow(known);
  const [row] = rows as readonly [ProcessRow];
  return {
    code: 'jar too large',
    text: `a ${jar.name} jar is larger than the largest tested for ${said(food, choice)}, a ${sizes[sizes.length - 1]}`,
    hint: {
      text: `use ${sizes.join(' or ')} jars${othersUpTo(jar, sizes[sizes.length - 1] as string)}`,
      holds: (way) => way.method === method && way.pack === packOf(row),
    },
    basis: [ruleBasis('next-larger', 'reason', 'no jar larger than the largest listed')],
  } satisfies Refused;
}

/** The band of the place, or why no line holds there. */
function bandFor(row: ProcessRow, { method, elevation }: Question): number | Refused {
  const bands = bandsOf(row);
  const thin = thinAir(method, elevation);
  if (thin !== undefined) return thin;
  const band = bandIndex(elevation, bands.upToFt);
  if (band !== undefined) return band;
  const end = formatQuantity({ value: bands.upToFt[bands.upToFt.length - 1] as number, unit: 'ft' });
  return {
    code: 'too high',
    text: `the ${method} tables end at ${end}; no pressure is printed in them for a higher place`,
    hint: {
      text: 'use a weighted-gauge canner, whose tables go higher, or freeze it',
      holds: (way) => way.method === 'weighted-gauge',
    },
    basis: [basisOf(bands, 'reason', 'elevation bands')],
  };
}

/**
 * The line that holds for a food and form, or why none does.
 *
 * @throws StillroomError MISSING for a pack that must be chosen
 */
export function decide(food: KnownFood, choice: FormChoice, asked: Question): Served | Refused {
  const barred = refusedChoice(food, choice).find((row) => row.pack === undefined && row.jar === undefined);
  if (barred !== undefined) return notCannedRow(barred);
  const ofMethod = rowsOfMethod(food, choice, asked.method);
  if (isRefused(ofMethod)) return ofMethod;
  const packs = packsOf(ofMethod);
  const pack = asked.pack ?? (packs.length === 1 ? packs[0] : undefined);
  if (pack === undefined)
    fail('MISSING', 'pack', asked.pack, `one of the tested packs: ${packs.join(', ')}`, { options: packs });
  const ofPack = rowsOfPack(food, choice, ofMethod, pack);
  if (isRefused(ofPack)) return ofPack;
  const size = sizeFor(food, choice, ofPack, asked);
  if (typeof size !== 'string') return size;
  const lines = ofPack.filter((row) => row.jars.includes(size));
  const band = bandFor(lines[0] as ProcessRow, asked);
  if (typeof band !== 'number') return band;
  const cells = lines.map((row) => cellOf(row, band));
  const cell = chooseCell(cells, asked);
  if (isRefused(cell)) return cell;
  const longest = ruleFigures('steam-time').high;
  if (asked.method === 'atmospheric-steam' && cell.minutes > longest) {
    return {
      code: 'too long for steam',
      text: `the process takes ${cell.minutes} min, and a steam canner may run ${longest} min at most`,
      hint: { text: 'use a boiling-water canner', holds: (way) => way.method === 'boiling-water' },
      basis: [ruleBasis('steam-time', 'reason', 'longest time of a steam canner')],
      cautions: [processCaution('steam-canner')],
    };
  }
  return { cell, cells, size, onlyPack: asked.pack === undefined && pack !== 'not stated' };
}
