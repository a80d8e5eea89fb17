import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { lookUp } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, fields, isMass, massOrVolume, name, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { scaleSyrup, syrupOfPercent } from '../sugar/printedSyrups';
import { VEGETABLES } from './beforeFreezing';
import { namedFoods } from './foodNames';
import { type Span, spanIn, spanOf } from './span';
import { freezingCaution, HEADSPACE, PACKS, type PackRow, type RuleRow, rule } from './tables';

const PACK_NAMES = ['dry', 'sugar', 'syrup', 'puree', 'crushed', 'unsweetened', 'water', 'juice', 'sauce'] as const;
const schema = fields({
  food: name('a food, such as "strawberry"'),
  style: choice('the style of pack', PACK_NAMES),
  amount: massOrVolume(),
});
export type FreezerPackInput = z.input<typeof schema>;

/** What one source prints for a pack, scaled to the amount. */
export interface PackIngredients {
  /** Sugar by measure. */
  readonly sugar?: Span<Quantity<'volume'>>;
  /** Sugar where the source gives it as parts by weight. */
  readonly sugarMass?: Quantity<'mass'>;
  /** Syrup to cover the fruit; one entry for each strength the source names. */
  readonly syrup?: readonly {
    readonly percent: number;
    readonly strength: string;
    readonly volume: Span<Quantity<'volume'>>;
    /** Sugar and water for the larger volume. */
    readonly sugar: Quantity<'volume'>;
    readonly water: Quantity<'volume'>;
  }[];
  readonly lemonJuice?: Quantity<'volume'>;
  readonly ascorbicAcid?: {
    /** Crystals to each quart of what `of` names. */
    readonly perQuart: Quantity<'volume'>;
    readonly of: 'syrup' | 'fruit' | 'water';
    /** For the whole amount; none where the quantity of covering water is the cook's. */
    readonly crystals?: Quantity<'volume'>;
    readonly mass?: Quantity<'mass'>;
    /** Water to dissolve it in before it is sprinkled over the fruit. */
    readonly dissolveIn?: Quantity<'volume'>;
  };
  /** Minutes in steam that do instead of the ascorbic acid. */
  readonly steamInstead?: Span<number>;
  /** Heating in boiling water, or in what `in` names, before packing. */
  readonly preheat?: { readonly minutes: Span<number>; readonly in: string };
  readonly note?: string;
  readonly basis: readonly Basis[];
}

export interface FreezerPack extends PackIngredients {
  readonly food: string;
  /** The style of pack: what goes in with the food. */
  readonly style: string;
  /** The prepared fruit (or puree, or juice) by measure. */
  readonly volume: Quantity<'volume'>;
  /** What other sources print for the same pack. */
  readonly others: readonly PackIngredients[];
  readonly cautions: readonly Caution[];
}

const FRUITS = namedFoods(PACKS.flatMap(({ foods }) => foods));
const FOODS = namedFoods([
  ...PACKS.flatMap(({ foods }) => foods),
  ...VEGETABLES.map(({ name: vegetable }) => vegetable),
]);

/** The newer guide before the older; what is only recalled comes last. */
const SOURCE_ORDER = ['nchfp-freeze', 'mu-ext-seasonal', 'msue-pfs'];
const preference = (row: PackRow): number =>
  (row.obtained === 'memory' ? 100 : 0) +
  (row.partsFruitToSugar === undefined ? 0 : 10) +
  SOURCE_ORDER.indexOf(row.source);

/** Which rows answer a pack: crushed fruit is the table's puree; fruit in plain water is unsweetened. */
const sorts = (pack: (typeof PACK_NAMES)[number]): readonly string[] =>
  pack === 'crushed' ? ['puree'] : pack === 'water' || pack === 'unsweetened' ? ['water', 'unsweetened'] : [pack];

/** What a quart of the prepared fruit weighs, lb: the row's own figure, or the one printed for its kind. */
function quartWeight(
  row: PackRow | undefined,
  food: string,
  pack: string,
): { pounds: number; from: PackRow | RuleRow } {
  if (row?.quartLb !== undefined) return { pounds: row.quartLb, from: row };
  const general = rule(
    sorts(pack as 'puree')[0] === 'puree' ? 'quart-puree' : food === 'apple' ? 'quart-sliced-apple' : 'quart-fruit',
  );
  return { pounds: general.low, from: general };
}

/** One row's sugar, syrup and acid for so many quarts. */
function ingredients(
  row: PackRow,
  quarts: number,
  massUnit: Quantity<'mass'>['unit'],
  pounds: number,
): PackIngredients {
  const perPint = rule('syrup-per-pint');
  const syrupEnds = [perPint.low, perPint.high] as const;
  const percents = row.syrupPercent === undefined ? [] : [...new Set(row.syrupPercent)];
  const syrup = percents.map((percent) => {
    const printed = syrupOfPercent(percent);
    const volume = spanIn<'volume'>(syrupEnds, quarts * 2, 'cup', 'cup');
    return { percent, strength: printed.strength, volume, ...scaleSyrup(printed, volume.high) };
  });
  const basis: Basis[] = [basisOf(row, 'what the pack takes')];
  if (syrup.length > 0) {
    basis.push(basisOf(perPint, 'syrup for each pint container'));
    for (const { percent } of syrup) basis.push(basisOf(syrupOfPercent(percent), `${percent} % syrup`));
  }
  const { ascorbicTsp, ascorbicPerQuartOf: of } = row;
  // the acid of a syrup is in all the syrup made, so for the larger volume
  const quartsOf = of === 'syrup' ? (quarts * 2 * perPint.high) / 4 : of === 'fruit' ? quarts : undefined;
  const milligrams = rule('ascorbic-tsp');
  if (ascorbicTsp !== undefined && quartsOf !== undefined)
    basis.push(basisOf(milligrams, 'weight of the ascorbic acid'));
  return {
    ...(row.sugarCups === undefined || row.perCups === undefined
      ? {}
      : { sugar: spanIn<'volume'>(row.sugarCups, (quarts * 4) / row.perCups, 'cup', 'cup') }),
    ...(row.partsFruitToSugar === undefined
      ? {}
      : { sugarMass: quantityIn<'mass'>(pounds / row.partsFruitToSugar, 'lb', massUnit) }),
    ...(syrup.length === 0 ? {} : { syrup }),
    ...(row.lemonJuiceTspPerQuart === undefined
      ? {}
      : { lemonJuice: { value: row.lemonJuiceTspPerQuart * quarts, unit: 'tsp' as const } }),
    ...(ascorbicTsp === undefined || of === undefined
      ? {}
      : {
          ascorbicAcid: {
            perQuart: { value: ascorbicTsp, unit: 'tsp' as const },
            of,
            ...(quartsOf === undefined
              ? {}
              : {
                  crystals: { value: ascorbicTsp * quartsOf, unit: 'tsp' as const },
                  mass: { value: ascorbicTsp * quartsOf * milligrams.low, unit: 'mg' as const },
                }),
            ...(row.ascorbicInTbspWater === undefined
              ? {}
              : { dissolveIn: { value: row.ascorbicInTbspWater * quarts, unit: 'tbsp' as const } }),
          },
        }),
    ...(row.steamInsteadMinutes === undefined ? {} : { steamInstead: spanOf(row.steamInsteadMinutes) }),
    ...(row.preheatMinutes === undefined
      ? {}
      : { preheat: { minutes: spanOf(row.preheatMinutes), in: row.preheatIn ?? 'boiling water' } }),
    ...(row.notes === undefined ? {} : { note: row.notes }),
    basis,
  };
}

/** A pack with nothing added: any fruit whose own page prints no dry pack, or a vegetable after blanching. */
function dryPack(
  food: string,
  volume: Quantity<'volume'>,
  weight: readonly Basis[],
  vegetable: boolean,
  darkens: boolean,
): FreezerPack {
  const row = HEADSPACE.find(({ pack }) => pack === 'dry');
  if (row === undefined) throw new Error('no dry pack in the headspace table');
  return {
    food,
    style: 'dry',
    volume,
    note: vegetable
      ? 'Nothing is added. Blanch first (see blanching), cool and drain well.'
      : 'Nothing is added; freeze on a tray first if pieces should stay apart.',
    basis: joinBasis([basisOf(row, 'dry pack: no sugar or liquid added')], weight),
    others: [],
    cautions: [
      ...(darkens ? [freezingCaution('fruit-darkens-dry')] : []),
      freezingCaution('freezing-does-not-sterilize'),
    ],
  };
}

/**
 * What a freezer pack of fruit takes: sugar, syrup, ascorbic acid or lemon juice, by the printed ratios.
 *
 * The first answer follows the newer guide; `others` holds what further sources print. A mass is turned into
 * quarts by the printed weight of a quart. Syrup covers fruit at 1/2 to 2/3 cup for each pint container.
 *
 * @param input.food - `"peach"`, `"strawberries"`; for a dry pack also a vegetable of the blanching list
 * @param input.style - `dry` (no sugar or liquid; with the ascorbic acid where the page prints it), `sugar`, `syrup`, `puree` or `crushed`, `unsweetened` or `water`,
 * `juice`, `sauce`
 * @param input.amount - prepared fruit (puree, juice) by measure or by weight
 * @returns the ingredients, or a refusal where no source prints that pack for the food
 * @throws StillroomError UNKNOWN_NAME, with the nearest names
 *
 * @example
 * ```ts
 * import { freezerPack } from 'stillroom/freezing';
 *
 * const pack = freezerPack({ food: 'strawberries', style: 'sugar', amount: '4 quarts' });
 * 'sugar' in pack && pack.sugar; // => { low: { value: 3, unit: 'cup' }, high: { value: 3, unit: 'cup' } }
 * ```
 */
export function freezerPack(input: FreezerPackInput): FreezerPack | Refusal {
  const { food: asked, style: pack, amount } = readInput(schema, input);
  const food = lookUp(asked, pack === 'dry' ? FOODS : FRUITS, 'food', 'fruit with a freezer pack').name;
  const printed = PACKS.filter((row) => row.foods.includes(food));
  const rows = printed
    .filter((row) => sorts(pack).includes(row.pack))
    .sort((one, other) => preference(one) - preference(other));
  const [first, ...rest] = rows;
  if (isMass(amount) && (pack === 'juice' || pack === 'sauce')) {
    fail('WRONG_DIMENSION', 'amount', input.amount, `a volume of ${pack}, such as "2 quarts"`);
  }
  const vegetable = printed.length === 0;
  if (vegetable && isMass(amount)) {
    fail('WRONG_DIMENSION', 'amount', input.amount, 'a volume, such as "2 quarts": no weight of a quart is printed');
  }
  const weight = quartWeight(first, food, pack);
  const quarts = isMass(amount) ? valueIn(amount, 'lb') / weight.pounds : valueIn(amount, 'quart');
  const volume = isMass(amount) ? quantityIn<'volume'>(quarts, 'quart', 'quart') : amount;
  const weightBasis = isMass(amount) ? [basisOf(weight.from, 'weight of a quart')] : [];
  if (pack === 'dry' && first === undefined) {
    const darkens = printed.some(({ ascorbicTsp }) => ascorbicTsp !== undefined);
    return answer(dryPack(food, volume, weightBasis, vegetable, darkens));
  }
  if (first === undefined) {
    const packs = [...new Set(printed.map((row) => row.pack))];
    return answer({
      tested: false,
      reason: `No source in the tables prints a ${pack} pack for ${food}.`,
      instead: `Printed for ${food}: ${packs.join(', ')}; any sound fruit may also be frozen dry.`,
      basis: printed.map((row) => basisOf(row, `${row.pack} pack`)),
      cautions: [],
    });
  }
  const massUnit = isMass(amount) ? amount.unit : 'lb';
  const scale = (row: PackRow) => ingredients(row, quarts, massUnit, quarts * weight.pounds);
  const served = scale(first);
  return answer({
    food,
    style: first.pack,
    volume,
    ...served,
    basis: joinBasis(served.basis, weightBasis),
    others: rest.map(scale),
    cautions: joinCautions(
      [freezingCaution('glass-needs-headspace'), freezingCaution('freezing-does-not-sterilize')],
      first.obtained === 'memory' ? [caution('recalled')] : [],
    ),
  });
}
