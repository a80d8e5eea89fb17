/** The least salt of a ferment that these tables hold, and whether a brine falls below it. */
import { findNamed, type Named } from '../common/names';
import { valueIn } from '../quantity/scale';
import { type Basis, type Caution, derived, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { fineSaltGrams } from './saltMeasure';
import { acidCaution, FERMENT_SALT, type FermentSaltRow, printed, rowWhere } from './tables';
import { waterGrams } from './water';

/** What ferments, by the names of the salt table. */
export const FERMENTS: readonly Named[] = [
  { name: 'sauerkraut', synonyms: ['kraut', 'cabbage', 'fermented cabbage', 'shredded cabbage'] },
  {
    name: 'dill pickles',
    synonyms: ['cucumber', 'pickling cucumber', 'pickles', 'fermented dill pickles', 'dill pickles, fermented'],
  },
];

/** What a share of salt is of: the water of the brine, or all that is in the crock. */
export type ShareOf = 'water' | 'water and produce';

/** The least share that a row prints, of one or the other. */
function shareOf(row: FermentSaltRow, of: ShareOf): number {
  if (row.percentLow !== undefined) return row.percentLow / 100;
  if (row.saltTbspPerQuartWater !== undefined) {
    const salt = fineSaltGrams({ value: row.saltTbspPerQuartWater, unit: 'tbsp' }).grams;
    return salt / waterGrams({ value: 1, unit: 'quart' });
  }
  const salt = fineSaltGrams({ value: printed(row, 'saltCups'), unit: 'cup' }).grams;
  const water = waterGrams({ value: printed(row, 'waterCups'), unit: 'cup' });
  const produce = of === 'water' ? 0 : valueIn({ value: printed(row, 'produceLb'), unit: 'lb' }, 'g');
  return salt / (water + produce);
}

/** The share of the cabbage that the printed spoons come to: the strongest of the lines that were read. */
export const drySaltRow = (): FermentSaltRow => {
  const rows = FERMENT_SALT.filter((row) => row.saltTbsp !== undefined && row.obtained !== 'memory');
  const share = (row: FermentSaltRow) => printed(row, 'saltTbsp') / printed(row, 'produceLb');
  return rowWhere(rows, (row) => rows.every((other) => share(row) >= share(other)), 'dry salt of sauerkraut');
};

/** Salt, water and produce of a crock, in grams. */
export interface Crock {
  readonly salt: number;
  readonly water: number | undefined;
  readonly produce: number | undefined;
}

/** The salt of a ferment against the least that is printed for it. */
export interface FermentCheck {
  /** The least printed share and what it is of; none where the brine is no ferment. */
  readonly least?: { readonly share: number; readonly of: ShareOf };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Doubles in the last digits are no shortage of salt. */
const NOISE = 1e-9;
/** Tenths of a gram, up: less would be refused again. */
const grams = (value: number): string => `${Number((Math.ceil(value * 10 - NOISE) / 10).toFixed(1))} g`;
const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;
/**
 * Refuses a ferment with less salt than these tables hold for the food; without a food, than they hold for any ferment.
 */
export function checkFerment(asked: string | undefined, crock: Crock): FermentCheck | { refused: Refusal } {
  const food = asked === undefined ? undefined : findNamed(asked, FERMENTS)[0]?.name;
  const shares = (
    [
      ['water', crock.water],
      // a brine without its produce says nothing of the crock
      ['water and produce', crock.produce === undefined ? undefined : (crock.water ?? 0) + crock.produce],
    ] as const
  ).flatMap(([of, weight]) => {
    if (weight === undefined) return [];
    // beside its produce a brine may be dry salting helped with water, so only a named food is held to its own brine
    if (of === 'water' && crock.produce !== undefined && food === undefined) return [];
    const rows = FERMENT_SALT.filter(
      (row) => row.leastOf?.includes(of) === true && (food === undefined || row.food === food),
    ).map((row) => ({ row, least: shareOf(row, of) }));
    const least = Math.min(...rows.map((entry) => entry.least));
    return rows
      .filter((entry) => entry.least === least)
      .slice(0, 1)
      .map(({ row }) => ({ row, of, least, weight, share: crock.salt / weight }));
  });
  const [first] = shares;
  if (first === undefined) throw new Error('no least salt');
  const basis = shares.map(({ row, of }) => basisOf(row, `least salt of a ferment, of ${of}`));
  const short = shares.find(({ share, least }) => share < least - NOISE);
  if (short !== undefined) {
    const of = short.of === 'water' ? 'the water' : 'what is in the crock';
    return {
      refused: {
        tested: false,
        reason: `The salt is ${percent(short.share)} of ${of}. The least that these tables hold for ${food ?? 'any ferment'} is ${percent(short.least)}: with less, what spoils food and what makes ill can grow before there is acid.`,
        instead: `Use at least ${grams(Math.max(...shares.map(({ least, weight }) => least * weight)))} of salt, by a tested recipe (fermentSalt has those for sauerkraut and dill pickles). For a soak, or a brine for fish or meat, set purpose to "other".`,
        basis: [...basis, derived('salt against the least of the table')],
        cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
      },
    };
  }
  const dry = drySaltRow();
  const spoons = fineSaltGrams({ value: printed(dry, 'saltTbsp'), unit: 'tbsp' }).grams;
  const bulletin = spoons / valueIn({ value: printed(dry, 'produceLb'), unit: 'lb' }, 'g');
  const ofCrock = shares.find(({ of }) => of === 'water and produce');
  const belowBulletin = food !== 'dill pickles' && ofCrock !== undefined && ofCrock.share < bulletin - NOISE;
  const last = ofCrock ?? first;
  return {
    least: { share: last.least, of: last.of },
    basis: [...basis, ...(belowBulletin ? [basisOf(dry, 'salt for cabbage')] : [])],
    cautions: [
      acidCaution('salt-guards-the-ferment'),
      ...(food === undefined ? [acidCaution(asked === undefined ? 'name-the-ferment' : 'ferment-not-in-tables')] : []),
      ...(belowBulletin ? [acidCaution('less-salt-than-the-bulletin')] : []),
    ],
  };
}
