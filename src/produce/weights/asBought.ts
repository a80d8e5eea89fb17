/** The amount of food as people buy it: weighed, by volume, by the piece, or by the container. */
import { atPath, fail, StillroomError } from '../../errors/StillroomError';
import { foodsNamed } from '../../foods/lookUpFood';
import { nameOf } from '../../foods/tables';
import { isTwofold, numberOf, oneReadingOf, scanAmount, skipSpaces } from '../../quantity/amount';
import { fields, isMass, massOrVolume, readInput, reading } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { MassInput, Quantity, Range, VolumeInput } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import type { Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { byNumber, formOfId, numbersOf } from '../forms';
import { missing } from '../shape';
import { basisOfRows, mapSpan, median, memoryCaution, type Span, spanIn, spanOf, workedOut } from '../span';
import { refuseRows } from '../yields/tables';
import { containersWeighed, packedWeight } from './containerWeight';
import { rawWeights } from './tables';
import { foodDensity } from './weights';

/** A mass, a volume, or words: a number of pieces or containers, such as `"40 apples"` or `"2 flats"`. */
export type BoughtInput = MassInput | VolumeInput;

/** An amount as it was read. */
export type Bought =
  | { readonly kind: 'mass'; readonly amount: Quantity<'mass'> }
  | { readonly kind: 'volume'; readonly amount: Quantity<'volume'> }
  | { readonly kind: 'count'; readonly count: number; readonly of: string };

const EXPECTED =
  'a mass, a volume, or a number of pieces or containers, such as "40 lb", "16 quarts", "2 flats" or "40 apples"';
const LONGEST = 100;
const MOST = 1_000_000;

/** A number of something. */
function counted(given: string, bare: string | undefined): Bought | undefined {
  const amount = scanAmount(given, skipSpaces(given, 0));
  if (amount === undefined) return undefined;
  const of = given.slice(amount.end).trim() || bare;
  if (of === undefined) return undefined;
  if (isTwofold(amount)) fail('NOT_A_QUANTITY', '', given, oneReadingOf(amount, of));
  const count = amount.point === undefined ? 0 : numberOf(amount.point);
  if (!(count > 0 && count <= MOST)) fail('OUT_OF_RANGE', '', given, `a number above 0 and at most ${MOST}`);
  return { kind: 'count', count, of };
}

/** Reads an amount of food as bought; `bare` is what a number alone counts, where it counts anything. */
export function readBought(given: unknown, bare?: string): Bought {
  if (given === undefined) fail('MISSING', '', given, EXPECTED);
  if (typeof given === 'string' && given.length <= LONGEST) {
    try {
      parseQuantity(given);
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      const mayCount = error.code === 'UNKNOWN_UNIT' || (bare !== undefined && error.code === 'NOT_A_QUANTITY');
      const found = mayCount ? counted(given, bare) : undefined;
      if (found !== undefined) return found;
      if (!mayCount) throw error;
    }
  }
  const amount = measured(given);
  return isMass(amount) ? { kind: 'mass', amount } : { kind: 'volume', amount };
}

/** A mass or a volume; the path of its error is that of the field. */
function measured(given: unknown): Quantity<'mass'> | Quantity<'volume'> {
  try {
    return readInput(fields({ raw: massOrVolume() }), { raw: given }).raw;
  } catch (error) {
    throw error instanceof StillroomError ? atPath(error, '') : error;
  }
}

/** The field `raw` of an argument that takes any amount of food as bought. */
export const bought = () => reading<BoughtInput, Bought>((given) => readBought(given));

/** What an amount weighs. */
export interface BoughtMass {
  readonly known: true;
  readonly raw: Range<Quantity<'mass'>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const weighs = (
  pounds: Span,
  food: string,
  rows: readonly Sourced[],
  note: string,
  more: readonly Basis[] = [],
): BoughtMass => ({
  known: true,
  raw: spanIn(pounds, 'lb', 'lb'),
  basis: [...basisOfRows(food, rows, 'raw', note), ...more],
  cautions: [caution('bought-by-measure'), ...memoryCaution(rows)],
});

/** The containers that go by the name of a unit of volume. */
const CONTAINER_OF: ReadonlyMap<string, string> = new Map(
  ['bushel', 'peck', 'quart', 'pint', 'gallon'].flatMap((name) => [
    [name, name],
    [`dry ${name}`, name],
  ]),
);

function massOfVolume(food: string, amount: Quantity<'volume'>): BoughtMass | NotKnown {
  const named = CONTAINER_OF.get(amount.unit);
  const container = named === undefined ? undefined : packedWeight(food, named);
  if (container !== undefined) {
    const pounds = mapSpan(container.pounds, (each) => each * amount.value);
    return weighs(pounds, food, container.rows, `net weight of a ${container.container}`);
  }
  const bushel = packedWeight(food, 'bushel');
  if (bushel !== undefined) {
    const bushels = valueIn(amount, 'bushel');
    return weighs(
      mapSpan(bushel.pounds, (each) => each * bushels),
      food,
      bushel.rows,
      'net weight of a bushel',
      [workedOut('raw', 'weight of a bushel x volume / volume of a bushel')],
    );
  }
  const whole = wholeDensity(food);
  if (whole === undefined) return noMeasure(food, `${amount.value} ${amount.unit}`);
  const milliliters = valueIn(amount, 'mL');
  const pounds = mapSpan(whole.gramsPerMl, (each) => quantityIn(each * milliliters, 'g', 'lb').value);
  return weighs(pounds, food, whole.rows, 'weight of a measure of the whole food');
}

/** The weight of a measure of a food as it grew; that of cut food says nothing of it. */
function wholeDensity(food: string) {
  const whole = foodDensity(food, formOfId('whole'));
  const grown = whole?.rows.every((row) => {
    const { forms = [] } = row as { readonly forms?: readonly string[] };
    return forms.length === 0 || forms.some((form) => formOfId(form)?.behaves === 'whole');
  });
  return grown ? whole : undefined;
}

/** Words for a piece of any food. */
const PIECES: ReadonlySet<string> = new Set([
  'piece',
  'pieces',
  'whole',
  'each',
  'fruit',
  'fruits',
  'heads',
  'head',
  'ears',
  'ear',
]);
/** Whether a word counts pieces of a food. */
export const isPiece = (food: string, of: string): boolean =>
  PIECES.has(of.toLowerCase()) || foodsNamed(of).some(({ id }) => id === food);

/** What pieces weigh with what comes off them: the tables weigh them without refuse. */
function massOfPieces(food: string, count: number, of: string): BoughtMass | NotKnown {
  const rows = byNumber(rawWeights, numbersOf(food, 'weights')).filter(({ piece }) => piece !== undefined);
  const [first] = rows;
  const refuse = first && refuseRows.find(({ ndb }) => ndb === first.ndb);
  if (first === undefined) return noMeasure(food, `${count} ${of}`);
  const own = rows.filter(({ ndb }) => ndb === first.ndb);
  const left = (refuse?.ediblePct ?? 100) / 100;
  const grams = (row: (typeof rows)[number]): number => row.grams / row.amount / left;
  const middle = own.filter(({ piece }) => piece === 'medium' || piece === 'usual');
  const likely = median((middle.length > 0 ? middle : own).map(grams));
  const pounds = mapSpan(spanOf(likely, own.map(grams)), (each) => quantityIn(each * count, 'g', 'lb').value);
  return weighs(
    pounds,
    food,
    [...own, ...(refuse === undefined ? [] : [refuse])],
    'weight of a piece, and its refuse',
    [workedOut('raw', 'number of pieces x weight of a piece / share of it that is not refuse')],
  );
}

const noMeasure = (food: string, amount: string): NotKnown =>
  missing('no weight', `These tables do not weigh ${amount} of ${nameOf(food)}.`, [
    { text: 'Weigh it, and give the mass.' },
    ...containersWeighed(food).map((each) => ({ text: `a ${each} of ${nameOf(food)}`, food: nameOf(food) })),
  ]);

/** What an amount of a food weighs as bought; a no where no table weighs it. */
export function massBought(food: string, bought: Bought): BoughtMass | NotKnown {
  if (bought.kind === 'mass') {
    const { amount } = bought;
    return { known: true, raw: { low: amount, likely: amount, high: amount }, basis: [], cautions: [] };
  }
  if (bought.kind === 'volume') return massOfVolume(food, bought.amount);
  if (isPiece(food, bought.of)) return massOfPieces(food, bought.count, bought.of);
  const container = packedWeight(food, bought.of);
  if (container === undefined) return noMeasure(food, `${bought.count} ${bought.of}`);
  return weighs(
    mapSpan(container.pounds, (each) => each * bought.count),
    food,
    container.rows,
    `net weight of a ${container.container}`,
  );
}
