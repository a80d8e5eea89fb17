/** The least salt of a ferment that these tables hold, and whether a brine falls below it. */
import type { FoundFood } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { valueIn } from '../quantity/scale';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { fineSaltGrams } from './saltMeasure';
import { acidCaution, FERMENT_SALT, FERMENTS, type FermentRow, type FermentSaltRow, printed, rowOf } from './tables';
import { waterGrams } from './water';

/** The ferment that a food means where a fermentation is asked for. */
export const fermentOf = ({ id }: FoundFood): FermentRow | undefined =>
  FERMENTS.find(({ foods }) => foods.includes(id));

/** What a share of salt is of: the water of the brine, or all that is in the crock. */
export type ShareOf = 'water' | 'water and food';
const COLUMN = { water: 'water', 'water and food': 'water-and-food' } as const;

/** The least share that a row prints, of one or the other. */
function shareOf(row: FermentSaltRow, of: ShareOf): number {
  if (row.percentLow !== undefined) return row.percentLow / 100;
  if (row.saltTbspPerQuartWater !== undefined) {
    const salt = fineSaltGrams({ value: row.saltTbspPerQuartWater, unit: 'tbsp' }).grams;
    return salt / waterGrams({ value: 1, unit: 'quart' });
  }
  const salt = fineSaltGrams({ value: printed(row, 'saltCups'), unit: 'cup' }).grams;
  const water = waterGrams({ value: printed(row, 'waterCups'), unit: 'cup' });
  const food = of === 'water' ? 0 : valueIn({ value: printed(row, 'produceLb'), unit: 'lb' }, 'g');
  return salt / (water + food);
}

/** The printed spoons of salt for cabbage: the stronger of the bulletin's two lines. */
export const drySaltRow = (): FermentSaltRow => rowOf(FERMENT_SALT, 'sauerkraut-dry-salt', 'dry salt of sauerkraut');

/** Salt, water and food of a crock, in grams. */
export interface Crock {
  readonly salt: number;
  readonly water: number | undefined;
  readonly ready: number | undefined;
}

/** The least salt of a ferment. */
export interface LeastSalt {
  /** The least share of salt that these tables hold for it, 0 to 1. */
  readonly share: number;
  /** What the share is of. */
  readonly shareOf: ShareOf;
}

/** The salt of a ferment against the least that is printed for it. */
export interface FermentCheck {
  /** The least printed share and what it is of; none where the brine is no ferment. */
  readonly leastSalt?: LeastSalt;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

interface Held extends LeastSalt {
  readonly row: FermentSaltRow;
  readonly weight: number;
  readonly actual: number;
}

/** Doubles in the last digits are no shortage of salt. */
const NOISE = 1e-9;
/** Tenths of a gram, up: less would be refused again. */
const grams = (value: number): string => `${Number((Math.ceil(value * 10 - NOISE) / 10).toFixed(1))} g`;
const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;

/** The printed shares that a crock is held to. */
function heldTo(crock: Crock, ferment: FermentRow | undefined): Held[] {
  const wholes = [
    ['water', crock.water],
    // a brine without its vegetables says nothing of the crock
    ['water and food', crock.ready === undefined ? undefined : (crock.water ?? 0) + crock.ready],
  ] as const;
  return wholes.flatMap(([of, weight]) => {
    if (weight === undefined) return [];
    // beside its vegetables a brine may be dry salting helped with water: only a named food is held to its own brine
    if (of === 'water' && crock.ready !== undefined && ferment === undefined) return [];
    const rows = FERMENT_SALT.filter(
      (row) => row.leastOf?.includes(COLUMN[of]) === true && (ferment === undefined || row.food === ferment.id),
    ).map((row) => ({ row, share: shareOf(row, of) }));
    const least = Math.min(...rows.map(({ share }) => share));
    return rows
      .filter(({ share }) => share === least)
      .slice(0, 1)
      .map(({ row, share }) => ({ row, shareOf: of, share, weight, actual: crock.salt / weight }));
  });
}

/** Too little salt: no figure is given for it. */
function refuse(short: Held, held: readonly Held[], ferment: FermentRow | undefined): NotKnown {
  const of = short.shareOf === 'water' ? 'the water' : 'what is in the crock';
  const food = ferment === undefined ? 'any ferment' : nameOf(ferment.id);
  const least = Math.max(...held.map(({ share, weight }) => share * weight));
  return notKnown({
    code: 'too-little-salt',
    text: `The salt is ${percent(short.actual)} of ${of}. The least that these tables hold for ${food} is ${percent(short.share)}: with less, what spoils food and what makes people ill can grow before there is acid.`,
    instead: [
      {
        text: `Use at least ${grams(least)} of salt, by a tested recipe; ferment has those for sauerkraut and dill pickles.`,
      },
      { text: 'For a soak, or a brine for fish or meat, set purpose to "other".' },
    ],
    basis: held.map(({ row, shareOf: whole }) => basisOf(row, 'reason', `least salt of a ferment, of ${whole}`)),
    cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
  });
}

/**
 * Refuses a ferment with less salt than these tables hold for the food; without a food, than they hold for any ferment.
 */
export function checkFerment(food: FoundFood | undefined, crock: Crock): FermentCheck | { refused: NotKnown } {
  const ferment = food === undefined ? undefined : fermentOf(food);
  const held = heldTo(crock, ferment);
  const [first] = held;
  if (first === undefined) throw new Error('no least salt');
  const short = held.find(({ actual, share }) => actual < share - NOISE);
  if (short !== undefined) return { refused: refuse(short, held, ferment) };
  const dry = drySaltRow();
  const spoons = fineSaltGrams({ value: printed(dry, 'saltTbsp'), unit: 'tbsp' }).grams;
  const bulletin = spoons / valueIn({ value: printed(dry, 'produceLb'), unit: 'lb' }, 'g');
  const ofCrock = held.find(({ shareOf: of }) => of === 'water and food');
  const belowBulletin = ferment?.brine !== true && ofCrock !== undefined && ofCrock.actual < bulletin - NOISE;
  const last = ofCrock ?? first;
  return {
    leastSalt: { share: last.share, shareOf: last.shareOf },
    basis: [
      ...held.map(({ row, shareOf: of }) => basisOf(row, 'leastSalt', `of ${of}`)),
      ...(belowBulletin ? [basisOf(dry, 'leastSalt', 'salt printed for cabbage')] : []),
      derived('leastSalt', 'the least share of the lines for it'),
    ],
    cautions: [
      acidCaution('salt-guards-the-ferment'),
      ...(ferment === undefined
        ? [acidCaution(food === undefined ? 'name-the-ferment' : 'ferment-not-in-tables')]
        : []),
      ...(belowBulletin ? [acidCaution('less-salt-than-the-bulletin')] : []),
    ],
  };
}
