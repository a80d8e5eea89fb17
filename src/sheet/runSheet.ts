import { nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import type { DayPlan, FeasibleDay, InfeasibleDay } from '../plan/request/dayPlan';
import { withPlan } from '../plan/request/withPlan';
import { capital, isMetric } from './amounts';
import { backOf, leftOutOf } from './back';
import { cardsOf } from './cards';
import { clockOf } from './clock';
import { oneLine, oneLines } from './escape';
import { frontOf } from './front';
import { htmlOf } from './html';
import { markdownOf } from './markdown';
import { measureIn, type SheetUnits } from './measure';
import type { Sheet } from './sheet';
import { say } from './words';

const FORMATS = ['markdown', 'html'] as const;
const UNITS = ['us', 'metric'] as const;
const OPTIONS = ['as', 'unitSystem', 'date', 'title'] as const;

/** How a run sheet is printed. */
export interface RunSheetOptions {
  /** `markdown`, or `html`: one file that needs nothing else; `markdown` where it is left out. */
  readonly as?: (typeof FORMATS)[number];
  /** `us` or `metric`; the units of the plan's lots where it is left out. */
  readonly unitSystem?: SheetUnits;
  /** The first day of the plan, as `2026-08-14`; days are numbered where it is left out. */
  readonly date?: string;
  /** What stands at the top of the front: up to 80 characters; `RUN SHEET` where it is left out. */
  readonly title?: string;
}

const LONGEST_TITLE = 80;

/**
 * A day's plan as a run sheet to print: the front with the times of day, a card for the station of each product, and a
 * back with why, costs, cautions and sources. No figure is new: each is the plan's.
 *
 * On the front one row is one thing that one person does, with a box to tick; what goes on beside it stands in the
 * columns of stove, canner and trays. Each canner load has a timer line: you write down when you see the boil or the
 * pressure, and count the minutes of the tested process from there, so a late start moves only what depends on it.
 * Times run down the page: only work done again at once shares a row, and days of the same work at the same hours share
 * their rows, with a box for each.
 *
 * Amounts are rounded as a cook measures, to the safe side: acid, pressure and food to prepare up, weights to stop drying
 * at down. One function makes both formats, since both show the same sheet: `as` says only how it is drawn. The HTML
 * file has no script and no link, and prints on Letter and A4: the front on one page, four cards a page.
 *
 * Names that the caller gave stay as they are: no markup, link or tag in them is one on the page. There is no clock in
 * here: the date is the caller's.
 *
 * @param plan - the answer of `planDay`
 * @param options - format, units, date and title
 * @returns Markdown or HTML; of a plan that is not feasible a short page with the reason and the most you can ask for
 * @throws StillroomError WRONG_TYPE for anything that is no answer of `planDay`; for an option that is no choice
 *
 * @example
 * ```ts
 * import { planDay } from 'stillroom/plan';
 * import { runSheet } from 'stillroom/sheet';
 *
 * const plan = planDay({
 *   lots: [{ food: 'apple', raw: '20 lb' }],
 *   kitchen: { elevation: '900 ft', hours: '6 h', dryer: { trays: 12, trayArea: '200 in2' } },
 *   products: [{ make: 'dried', from: 'apples' }],
 * });
 * const page = runSheet(plan, { title: 'APPLES', date: '2026-10-03' });
 * page.split(' · work')[0]; // => '# APPLES · Sat 3 October · 900 ft · 1 cook · start 8:00'
 * ```
 */
export function runSheet(plan: DayPlan, options: RunSheetOptions = {}): string {
  const { as, title, ...rest } = readOptions(options);
  return withPlan('plan', plan, (given) => {
    const shown = oneLines(given);
    const sheet = shown.feasible ? sheetOf(shown, title, rest) : noPlan(shown, title);
    return as === 'html' ? htmlOf(sheet) : markdownOf(sheet);
  });
}

function readOptions(options: RunSheetOptions) {
  if (typeof options !== 'object' || options === null || Array.isArray(options))
    fail('WRONG_TYPE', 'options', options, 'options, as { as, unitSystem, date, title }');
  for (const name of Object.keys(options)) {
    if (!(OPTIONS as readonly string[]).includes(name))
      fail('UNKNOWN_FIELD', name, name, 'no field of that name', {
        options: [...OPTIONS],
        nearest: nearestNames(name, OPTIONS),
      });
  }
  const { as = 'markdown', unitSystem: units, date, title } = options;
  if (!FORMATS.includes(as)) fail('UNKNOWN_NAME', 'as', as, 'a format', { options: [...FORMATS] });
  if (units !== undefined && !UNITS.includes(units))
    fail('UNKNOWN_NAME', 'unitSystem', units, 'units', { options: [...UNITS] });
  if (date !== undefined && typeof date !== 'string') fail('WRONG_TYPE', 'date', date, 'a date, as "2026-08-14"');
  if (title !== undefined && (typeof title !== 'string' || oneLine(title) === '' || title.length > LONGEST_TITLE))
    fail('WRONG_TYPE', 'title', title, `a title of 1 to ${LONGEST_TITLE} characters`);
  // a date that no calendar has is refused here, not as a plan that cannot be read
  clockOf({ startClock: 0 }, date);
  return { as, units, date, title: title === undefined ? undefined : oneLine(title) };
}

function sheetOf(
  plan: FeasibleDay,
  title: string | undefined,
  { units, date }: { readonly units: SheetUnits | undefined; readonly date: string | undefined },
): Sheet {
  const pen = { plan, clock: clockOf(plan.schedule, date), measure: measureIn(units ?? unitsOf(plan)) };
  const { front, said } = frontOf(pen, title, date !== undefined);
  return { title: title ?? say('title'), front, cards: cardsOf(pen), back: backOf(pen, said) };
}

/** The units of the first lot. */
function unitsOf({ products, leftFresh, keptFresh }: FeasibleDay): SheetUnits {
  const [mass] = [...products.map(({ raw }) => raw), ...[...leftFresh, ...keptFresh].map(({ raw }) => raw)];
  return isMetric(mass) ? 'metric' : 'us';
}

/** A short page: why there is no plan, and what there could be. */
function noPlan({ reason, conflicts, most, leftOut, cautions }: InfeasibleDay, title: string | undefined): Sheet {
  const instead = most.map(({ name, least, count: promised, proven }) => {
    const count =
      promised === 0 ? say('none.zero') : proven ? String(promised) : say('none.at-least', { count: promised });
    return say('none.most-line', { name: capital(name), promised: count, least });
  });
  return {
    title: title ?? say('none.title'),
    front: {
      head: [...(title === undefined ? [] : [title]), say('none.title')],
      invented: false,
      lines: [{ label: say('none.why', { reason: reason.text }), text: '' }],
      rows: [],
      foot: [],
    },
    cards: [],
    back: [
      { title: say('none.conflicts'), lines: conflicts.map(capital) },
      { title: say('none.most'), lines: instead },
      leftOutOf(leftOut),
      { title: say('back.cautions'), lines: cautions.map(({ text }) => text) },
    ].filter(({ lines }) => lines.length > 0),
  };
}
