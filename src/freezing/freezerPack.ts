import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { narrowerOf } from '../foods/lookUpFood';
import { foodOf, nameOf } from '../foods/tables';
import { choice, fields, isMass, massOrVolume, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { type SyrupStrength, scaleSyrup, syrupOfPercent } from '../sugar/printedSyrups';
import { blanchingRows, packsOf } from './beforeFreezing';
import { type Span, spanIn, spanOf } from './span';
import { freezingCaution, HEADSPACE, PACKS, type PackRow, RULES, type RuleRow, rule } from './tables';

const PACK_NAMES = ['dry', 'sugar', 'syrup', 'puree', 'crushed', 'unsweetened', 'water', 'juice', 'sauce'] as const;
const schema = fields({
  /** A fruit, such as `"strawberry"`; for a dry pack also a vegetable. */
  food: food(),
  /**
   * What is added: nothing (`dry`), `sugar`, `syrup`, or water (`water`, `unsweetened`); or how it is cut down: `puree`,
   * `crushed`, `juice`, `sauce`.
   */
  style: choice('the style of pack', PACK_NAMES),
  /** The prepared fruit, puree or juice, by measure or by weight. */
  amount: massOrVolume(),
});
export type FreezerPackInput = z.input<typeof schema>;

/** A syrup to cover the fruit of a pack. */
export interface PackSyrup {
  /** Degrees Brix: percent of sugar by weight. */
  readonly brix: number;
  /** What the guide calls it: `light`, `medium`. */
  readonly strength: SyrupStrength;
  /** Syrup for the whole amount. */
  readonly volume: Span<Quantity<'volume'>>;
  /** Sugar for the larger volume. */
  readonly sugarVolume: Quantity<'volume'>;
  /** Water for the larger volume. */
  readonly waterVolume: Quantity<'volume'>;
}

/** Ascorbic acid for a pack. */
export interface AscorbicDose {
  /** Crystals to each quart of what `perQuartOf` names. */
  readonly perQuart: Quantity<'volume'>;
  /** What the quart is of. */
  readonly perQuartOf: 'syrup' | 'fruit' | 'water';
  /** Crystals for the whole amount; absent where you choose how much water covers the fruit. */
  readonly crystals?: Quantity<'volume'>;
  /** What these crystals weigh. */
  readonly mass?: Quantity<'mass'>;
  /** Water to dissolve them in before you sprinkle it over the fruit. */
  readonly dissolveIn?: Quantity<'volume'>;
}

/** What one source prints for a pack, scaled to the amount. */
export interface PackIngredients {
  /** The style of pack: what goes in with the food. */
  readonly style: PackRow['pack'];
  /** Sugar by measure. */
  readonly sugarVolume?: Span<Quantity<'volume'>>;
  /** Sugar where the source gives it as parts by weight. */
  readonly sugarMass?: Quantity<'mass'>;
  /** Syrups to cover the fruit; one for each strength the source names. */
  readonly syrups?: readonly PackSyrup[];
  /** Bottled lemon juice. */
  readonly lemonJuice?: Quantity<'volume'>;
  /** Ascorbic acid against browning. */
  readonly ascorbicDose?: AscorbicDose;
  /** Minutes in steam that replace the ascorbic acid. */
  readonly steamInstead?: Span<number>;
  /** Heating before packing. */
  readonly preheat?: {
    /** How long. */
    readonly minutes: Span<number>;
    /** What it is heated in: `boiling water`. */
    readonly in: string;
  };
  /** What else the source says. */
  readonly note?: string;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

export interface FreezerPack extends PackIngredients {
  /** The figures are here. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** The prepared fruit (or puree, or juice) by measure. */
  readonly volume: Quantity<'volume'>;
  /** What other sources print for the same pack. */
  readonly others: readonly PackIngredients[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Which rows answer a pack: crushed fruit is the table's puree; fruit in plain water is unsweetened. */
const sorts = (pack: (typeof PACK_NAMES)[number]): readonly string[] =>
  pack === 'crushed' ? ['puree'] : pack === 'water' || pack === 'unsweetened' ? ['water', 'unsweetened'] : [pack];

/** The food whose packs serve for one that has none of its own. */
const packLender = (id: string): string | undefined =>
  figuresFor(id, 'freezing').find((each) => PACKS.some(({ foods }) => foods.includes(each)));

/** What a quart of the prepared fruit weighs, lb: the row's own figure, or the one printed for its kind. */
function quartWeight(row: PackRow | undefined, id: string, pack: string): { pounds: number; from: PackRow | RuleRow } {
  if (row?.quartLb !== undefined) return { pounds: row.quartLb, from: row };
  const general =
    sorts(pack as 'puree')[0] === 'puree'
      ? rule('quart-puree')
      : (RULES.find(({ food }) => food === id) ?? rule('quart-fruit'));
  return { pounds: general.low, from: general };
}

/** One row's ascorbic acid for these quarts, where it prints some; `syrupCups` cover a pint. */
function ascorbicDose(row: PackRow, quarts: number, syrupCups: number): AscorbicDose | undefined {
  const { ascorbicTsp, ascorbicPerQuartOf: perQuartOf, ascorbicInTbspWater } = row;
  if (ascorbicTsp === undefined || perQuartOf === undefined) return undefined;
  // the acid of a syrup is in all the syrup made, so for the larger volume
  const quartsOf = { syrup: (quarts * 2 * syrupCups) / 4, fruit: quarts, water: undefined }[perQuartOf];
  return {
    perQuart: { value: ascorbicTsp, unit: 'tsp' },
    perQuartOf,
    ...(quartsOf === undefined
      ? {}
      : {
          crystals: { value: ascorbicTsp * quartsOf, unit: 'tsp' },
          mass: { value: ascorbicTsp * quartsOf * rule('ascorbic-tsp').low, unit: 'mg' },
        }),
    ...(ascorbicInTbspWater === undefined ? {} : { dissolveIn: { value: ascorbicInTbspWater * quarts, unit: 'tbsp' } }),
  };
}

/** One row's sugar, syrup and acid for these quarts of a food. */
function ingredients(
  row: PackRow,
  id: string,
  quarts: number,
  massUnit: Quantity<'mass'>['unit'],
  pounds: number,
): PackIngredients {
  const perPint = rule('syrup-per-pint');
  const syrupEnds = [perPint.low, perPint.high] as const;
  const strengths = row.syrupBrix === undefined ? [] : [...new Set(row.syrupBrix)];
  const syrups = strengths.map((brix): PackSyrup => {
    const printed = syrupOfPercent(brix);
    const volume = spanIn<'volume'>(syrupEnds, quarts * 2, 'cup', 'cup');
    const { sugar, water } = scaleSyrup(printed, volume.high);
    return { brix, strength: printed.strength, volume, sugarVolume: sugar, waterVolume: water };
  });
  const lender = row.foods.includes(id) ? undefined : packLender(id);
  const basis: Basis[] = [
    { ...basisOf(row, 'style', 'what the pack takes'), ...(lender === undefined ? {} : { food: nameOf(lender) }) },
  ];
  if (syrups.length > 0) {
    basis.push(basisOf(perPint, 'syrups[].volume', 'syrup for each pint container'));
    for (const { brix } of syrups) basis.push(basisOf(syrupOfPercent(brix), 'syrups[].sugarVolume', `${brix} % syrup`));
  }
  const ascorbic = ascorbicDose(row, quarts, perPint.high);
  if (ascorbic?.mass !== undefined) basis.push(basisOf(rule('ascorbic-tsp'), 'ascorbicDose.mass'));
  return {
    style: row.pack,
    ...(row.sugarCups === undefined || row.perCups === undefined
      ? {}
      : { sugarVolume: spanIn<'volume'>(row.sugarCups, (quarts * 4) / row.perCups, 'cup', 'cup') }),
    ...(row.partsFruitToSugar === undefined
      ? {}
      : { sugarMass: quantityIn<'mass'>(pounds / row.partsFruitToSugar, 'lb', massUnit) }),
    ...(syrups.length === 0 ? {} : { syrups }),
    ...(row.lemonJuiceTspPerQuart === undefined
      ? {}
      : { lemonJuice: { value: row.lemonJuiceTspPerQuart * quarts, unit: 'tsp' as const } }),
    ...(ascorbic === undefined ? {} : { ascorbicDose: ascorbic }),
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
  printed: readonly PackRow[],
): FreezerPack {
  const row = HEADSPACE.find(({ pack }) => pack === 'dry');
  if (row === undefined) throw new Error('no dry pack in the headspace table');
  const darkens = printed.some(({ ascorbicTsp }) => ascorbicTsp !== undefined);
  return {
    known: true,
    food,
    style: 'dry',
    volume,
    note: vegetable
      ? 'Nothing is added. Blanch first (see blanching), cool and drain well.'
      : 'Nothing is added; freeze on a tray first if pieces should stay apart.',
    basis: [basisOf(row, 'style', 'dry pack: no sugar or liquid added'), ...weight],
    others: [],
    cautions: [
      ...(darkens ? [freezingCaution('fruit-darkens-dry')] : []),
      ...(printed.length === 0 && !vegetable ? [freezingCaution('fruit-not-in-tables')] : []),
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
 * @returns the ingredients, or `known: false` where these tables have no such pack for the food
 * @throws StillroomError UNKNOWN_NAME for a name that is no food, with the nearest names
 *
 * @example
 * ```ts
 * import { freezerPack } from 'stillroom/freezing';
 *
 * const pack = freezerPack({ food: 'strawberries', style: 'sugar', amount: '4 quarts' });
 * pack.known && pack.sugarVolume; // => { low: { value: 3, unit: 'cup' }, high: { value: 3, unit: 'cup' } }
 * ```
 */
export function freezerPack(input: FreezerPackInput): FreezerPack | NotKnown {
  const { food: asked, style, amount } = readInput(schema, input);
  const printed = packsOf(asked.id);
  const rows = printed.filter((row) => sorts(style).includes(row.pack)).sort((one, other) => one.rank - other.rank);
  const [first, ...rest] = rows;
  if (isMass(amount) && (style === 'juice' || style === 'sauce')) {
    fail('WRONG_DIMENSION', 'amount', input.amount, `a volume of ${style}, such as "2 quarts"`);
  }
  const vegetable = printed.length === 0 && blanchingRows(asked.id).length > 0;
  const fruit = printed.length > 0 || foodOf(asked.id).kind === 'fruit';
  if (first === undefined && !(style === 'dry' && (fruit || vegetable))) {
    return answer(notPrinted(asked, style, printed));
  }
  if (!fruit && isMass(amount)) {
    fail('WRONG_DIMENSION', 'amount', input.amount, 'a volume, such as "2 quarts": no weight of a quart is printed');
  }
  const weight = quartWeight(first, asked.id, style);
  const quarts = isMass(amount) ? valueIn(amount, 'lb') / weight.pounds : valueIn(amount, 'quart');
  const volume = isMass(amount) ? quantityIn<'volume'>(quarts, 'quart', 'quart') : amount;
  const weightBasis = isMass(amount) ? [basisOf(weight.from, 'volume', 'weight of a quart')] : [];
  if (first === undefined) return answer(dryPack(asked.name, volume, weightBasis, vegetable, printed));
  const massUnit = isMass(amount) ? amount.unit : 'lb';
  const scale = (row: PackRow) => ingredients(row, asked.id, quarts, massUnit, quarts * weight.pounds);
  const served = scale(first);
  return answer({
    known: true,
    food: asked.name,
    volume,
    ...served,
    basis: [...served.basis, ...weightBasis],
    others: rest.map(scale),
    cautions: [
      freezingCaution('glass-needs-headspace'),
      freezingCaution('freezing-does-not-sterilize'),
      ...(first.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  });
}

function notPrinted({ id, name }: FoundFood, style: string, printed: readonly PackRow[]): NotKnown {
  const food = name;
  const kinds = narrowerOf(id).filter((kind) => packsOf(kind).length > 0);
  const styles = [...new Set(printed.map((row) => row.pack))];
  return notKnown({
    code: printed.length === 0 ? 'not in these tables' : 'no such pack',
    text: `These tables hold no ${style} pack for ${food}.`,
    instead:
      styles.length === 0
        ? [
            ...kinds.map((kind) => ({ text: `Name the kind: ${nameOf(kind)}.`, food: nameOf(kind) })),
            { text: 'Freeze fruit dry; blanch or cook a vegetable first (see blanching).' },
          ]
        : [
            ...styles.map((other) => ({ text: `Pack it as ${other}.`, food })),
            { text: 'Any sound fruit may also be frozen dry.', food },
          ],
    basis:
      printed.length === 0
        ? [derived('reason', 'what the tables of freezer packs hold')]
        : printed.map((row) => basisOf(row, 'instead', `${row.pack} pack`)),
  });
}
