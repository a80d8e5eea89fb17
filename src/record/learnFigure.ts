import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { choice, fields, list, name, optional, readInput, reading } from '../quantity/fields';
import { parseShare } from '../quantity/share';
import type { Range, ShareInput } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import { recordCaution } from './cautions';
import { isRange, LARGEST, type Learned, learn, SMALLEST } from './statistics';

/** Below this many records the answer says that the published range still makes up much of it. */
const FEW = 5;
const LONGEST_LIST = 100_000;
const POSITIVE = 'a figure above zero (1e-9 or more)';

/** A plain figure, or a share in percent. */
const figure = (what: string) =>
  reading<ShareInput, number>((given) => {
    const expected = `${what}: a number from -1e9 to 1e9, or a share such as "85 %"`;
    if (given === undefined) fail('MISSING', '', given, expected);
    if (typeof given === 'string') return parseShare(given);
    if (typeof given !== 'number') fail('WRONG_TYPE', '', given, expected);
    if (!(Math.abs(given) <= LARGEST)) fail('OUT_OF_RANGE', '', given, expected);
    return given;
  });

const schema = /* @__PURE__ */ fields({
  /** What the figure is, for the basis: "hours per pound". */
  what: optional(name('what is learned, such as "hours per pound"')),
  /** Where the next batch falls 9 times in 10, by a book or your own guess. */
  prior: fields({
    /** The low end; from -1e9 to 1e9, or in percent. */
    low: figure('the low end of the published range'),
    /** The likely figure, between the ends. */
    likely: figure('the likely figure of the published range'),
    /** The high end, above the low one. */
    high: figure('the high end of the published range'),
  }),
  /** Your own figures, 0 to 100,000 of them, in the same unit. */
  observed: list('your own figures', figure('a figure of your own'), 0, LONGEST_LIST),
  /**
   * `plain` (if not given) for figures that differ by an amount, `times` for those that differ by a factor and are above
   * zero, `share` for shares from 0 to 1.
   */
  varies: optional(choice('how the figure varies', ['plain', 'times', 'share'])),
});
export type LearnFigureInput = Given<z.input<typeof schema>>;

/** A figure learned from a published range and your own records. */
export interface LearnedFigure extends Learned {
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** The line of the model behind a field. */
export const modelBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: 'bayes-first-course',
  locator: 'section 5.3',
  note: 'normal with mean and spread both unknown; the next batch by Student t',
});
/** The line of your own records behind a field. */
export const ownRecords = (of: string, n: number): Basis[] =>
  n === 0 ? [] : [measured(of, `${n} ${n === 1 ? 'record' : 'records'} of your own`)];

/** What to mind with a learned figure. */
export function cautionsOf({ n, outliers }: Learned): Caution[] {
  return [
    ...(n < FEW ? [recordCaution('few-records')] : []),
    ...(outliers.length > 0 ? [recordCaution('figures-set-aside')] : []),
    caution('estimate'),
  ];
}

type Asked = z.output<typeof schema>;

/** Refuses a range out of order, and figures that cannot vary as they are said to. */
function check({ prior, observed, varies }: Asked): void {
  if (!isRange(prior)) {
    fail('CONTRADICTION', 'prior', prior, 'low, likely and high in rising order, with low below high');
  }
  const each = (test: (value: number) => boolean, expected: string): void => {
    for (const end of ['low', 'likely', 'high'] as const) {
      if (!test(prior[end])) fail('OUT_OF_RANGE', `prior.${end}`, prior[end], expected);
    }
    const wrong = observed.findIndex((value) => !test(value));
    if (wrong !== -1) fail('OUT_OF_RANGE', `observed[${wrong}]`, observed[wrong], expected);
  };
  if (varies === 'times') each((value) => value >= SMALLEST, POSITIVE);
  if (varies === 'share') each((value) => value >= 0 && value <= 1, 'a share from 0 to 1 (or the same in percent)');
}

/** A figure for next time, from a published range and your own figures; `learnFromRecords` says by which model. */
export function learnFigure(input: LearnFigureInput): LearnedFigure {
  const asked = readInput(schema, input);
  check(asked);
  const { what = 'published range', prior, observed, varies = 'plain' } = asked;
  const learned = learn({ ...prior } satisfies Range<number>, observed, varies);
  return answer({
    ...learned,
    basis: [
      measured('figure', `${what}, as you gave it`),
      modelBasis('figure'),
      modelBasis('average'),
      ...ownRecords('figure', learned.n),
    ],
    cautions: cautionsOf(learned),
  });
}
