import * as z from 'zod/mini';
import makesTable from '../../../data/plan/makes.json';
import { nearestNames } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, readFood } from '../../foods/fields';
import { fields, number, optional, readInput, reading } from '../../quantity/fields';
import { parseMoney } from '../../quantity/money';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { MoneyInput, Quantity, TimeInput } from '../../quantity/types';
import { MAKES, type Makes } from '../../recipes/rows/tables';
import { forReaders, id, practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable } from '../../sources/table';

/** The most hours of one day, and of each of several, whose breaks are part of the plan. */
const LONGEST_DAY = { one: 48, several: 20 };

/** Minutes from the start of one day to the start of the next. */
export const DAY = 24 * 60;

/** The most days of one plan. */
export const MOST_DAYS = 7;

/** The hours of work: of one day, or of each of several days, the second starting 24 h after the first. */
export const hoursOfWork = () =>
  reading<TimeInput | readonly TimeInput[], Quantity<'time'>[]>((given) => {
    const read = (day: unknown, path: string, most: number) => {
      const hours = parseQuantity(day, 'time', path);
      const value = valueIn(hours, 'h');
      if (!(value > 0 && value <= most)) fail('OUT_OF_RANGE', path, day, `a value above 0 h and at most ${most} h`);
      return hours;
    };
    if (!Array.isArray(given)) return [read(given, '', LONGEST_DAY.one)];
    if (given.length === 0 || given.length > MOST_DAYS)
      fail(given.length === 0 ? 'OUT_OF_RANGE' : 'TOO_MUCH', '', given, `the hours of 1 to ${MOST_DAYS} days`);
    return given.map((day, index) => read(day, `[${index}]`, LONGEST_DAY.several));
  });

/** Worth of one unit: money, or a plain number of points. */
export const worth = () =>
  reading<number | MoneyInput, { value: number; currency?: string }>((given) => {
    if (typeof given === 'number') {
      if (!(given >= 0 && given <= 1e9)) fail('OUT_OF_RANGE', '', given, 'a worth of 0 to 10^9');
      return { value: given };
    }
    const { value, unit } = parseMoney(given);
    return { value, currency: unit };
  });

export const makesRow = () =>
  z.strictObject({
    id: forReaders(id()),
    word: text(),
    makes: z.array(z.enum(MAKES)).check(z.minLength(1)),
    canned: z.exactOptional(z.literal(true)),
    ...practiceColumns(),
  });
type MakesRow = RowOf<typeof makesRow>;
const WIDER: ReadonlyMap<string, MakesRow> = new Map(asTable<MakesRow>(makesTable).rows.map((row) => [row.word, row]));

/** What a product makes: the kinds of recipe that the word stands for, the usual one first. */
export interface MakeWord {
  /** The word as it was given. */
  readonly word: string;
  /** Kinds of recipe, the usual one first. */
  readonly makes: readonly Makes[];
  /** Only what a tested heat process ends in. */
  readonly canned: boolean;
}

/** The kinds of recipe that a wider word stands for. */
export const makesOf = (word: string): readonly Makes[] => WIDER.get(word)?.makes ?? [];

/** A word for what to make: one that recipes use, or a wider one. */
export const makeWord = () =>
  reading<string, MakeWord>((given) => {
    const words = [...MAKES, ...WIDER.keys()];
    const expected = `what to make: ${words.join(', ')}`;
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected, { options: words });
    const word = given.trim().toLowerCase();
    const own = MAKES.find((each) => each === word);
    const wider = WIDER.get(word);
    // a wider word may be that of one kind: jam first, and then all else that is spread on bread
    if (wider !== undefined) return { word, makes: wider.makes, canned: wider.canned === true };
    if (own !== undefined) return { word, makes: [own], canned: false };
    return fail('UNKNOWN_NAME', '', given, expected, { options: words, nearest: nearestNames(given, words) });
  });

/** One food, or up to 10 that go in together. */
export const foodNames = () =>
  reading<string | readonly string[], readonly FoundFood[]>((given) => {
    if (!Array.isArray(given)) return [readFood(given)];
    if (given.length === 0 || given.length > 10) fail('OUT_OF_RANGE', '', given, '1 to 10 foods');
    return given.map((each, index) => readFood(each, `[${index}]`));
  });

const PECTINS = ['none', 'powdered', 'liquid'] as const;

export type PectinWord = (typeof PECTINS)[number];

/** The pectin of a jam: a word, or whether any is added. */
export const pectinWanted = () =>
  reading<boolean | PectinWord, boolean | PectinWord>((given) => {
    if (typeof given === 'boolean') return given;
    const expected = `whether pectin is added to the jam: true, false, or one of ${PECTINS.join(', ')}`;
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected);
    return PECTINS.find((word) => word === given.trim().toLowerCase()) ?? fail('UNKNOWN_NAME', '', given, expected);
  });

/** What a plan can make the most of, in a word. */
export const AIMS = ['most worth', 'least waste', 'fewest hours', 'least cost'] as const;

export type AimWord = (typeof AIMS)[number];

const weight = () => optional(number('a weight of 0 to 1,000,000', { min: 0, max: 1e6 }));

/** Or by weights: for each unit of worth and kg used, and against each unit of money and hour of hands. */
const weights = fields({
  /** For each unit of worth, 0 to 1,000,000. */
  worth: weight(),
  /** For each kg used, 0 to 1,000,000. */
  waste: weight(),
  /** Against each unit of money, 0 to 1,000,000. */
  money: weight(),
  /** Against each hour of hands, 0 to 1,000,000. */
  handsHours: weight(),
});

export type AimWeights = z.output<typeof weights>;

/** What the plan is to make the most of: a word, or weights. */
export type Aim = AimWord | AimWeights;

/** A word or weights; the error tells which fields are wrong in the one that was meant. */
export const aim = () =>
  reading<AimWord | z.input<typeof weights>, AimWord | AimWeights>((given) =>
    typeof given === 'object' && given !== null ? readInput(weights, given) : readWord(given),
  );

function readWord(given: unknown): AimWord {
  const expected = `an aim: ${AIMS.join(', ')}, or weights such as { worth: 1, hours: 5 }`;
  if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected);
  return AIMS.find((word) => word === given.trim().toLowerCase()) ?? fail('UNKNOWN_NAME', '', given, expected);
}
