import * as z from 'zod/mini';
import table from '../../data/sheet/beside.json';
import type { FeasibleDay, ToReady } from '../plan/request/dayPlan';
import { TASK_KINDS } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { ruleFigures } from '../process/canningRules';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { type Clock, letter } from './clock';
import { footOf } from './foot';
import { called, counted, type Pen } from './pen';
import { withRepeats } from './repeats';
import { type Open, rowsOf } from './rows';
import type { Front, Line, Row } from './sheet';
import { say } from './words';

export const besideRow = () =>
  z.strictObject({
    beside: z.exactOptional(z.enum(TASK_KINDS)),
    /** What it says, where another says the same. */
    says: z.exactOptional(text()),
    card: z.exactOptional(z.literal(true)),
    ...practiceColumns(),
  });
const BESIDE = asTable<RowOf<typeof besideRow>>(table).rows;
const SAYS = new Map(BESIDE.map(({ id, says }) => [id, says ?? id]));
/** What a caution says: its own id, or a word that it shares with others. */
export const saysOf = ({ id }: Caution): string => SAYS.get(id) ?? id;

const MOST_CAUTIONS = 3;

/** The front page, and the cautions that it and the cards have said. */
export function frontOf(
  pen: Pen,
  title: string | undefined,
  dated: boolean,
): { front: Front; said: ReadonlySet<string> } {
  const { plan, clock } = pen;
  const { rows, said } = withCautions(plan, withRepeats(rowsOf(pen), clock));
  return {
    front: {
      head: headOf(pen, title, dated),
      invented: plan.invented,
      lines: linesOf(pen),
      rows: withDays(pen, rows),
      foot: plan.products.length === 0 ? [] : footOf(pen),
    },
    said,
  };
}

function headOf({ plan, clock, measure }: Pen, title: string | undefined, dated: boolean): string[] {
  const { schedule, elevation, products } = plan;
  const cooks = schedule.resources.find(({ resource }) => resource === 'hands')?.available ?? 1;
  const names = [...new Set(schedule.tasks.flatMap(({ who = [] }) => who))];
  return [
    title ?? say('title'),
    ...(dated ? [clock.dayName(clock.day(0))] : []),
    say('elevation', { elevation: measure.elevation(elevation) }),
    names.length > 0 ? names.join(say('comma')) : cooks === 1 ? say('cook.one') : say('cook.many', { count: cooks }),
    say('start', { time: clock.time(0) }),
    ...(products.length === 0 ? [] : [say('end', { time: clock.when(schedule.makespan, 0) })]),
  ];
}

/** What to buy, what to count on, what to have ready. */
function linesOf({ plan, clock, measure }: Pen): Line[] {
  const { haveReady: ready, products, keptFresh, notSound } = plan;
  if (products.length === 0) return [{ label: say('empty.title'), text: plan.nothingMade?.text ?? '' }];
  const amount = (value: ToReady['needed']) =>
    typeof value === 'number' ? String(value) : measure.amount(value as Quantity<'mass'>, 'up');
  const bought = new Map<string, string>();
  for (const { what, short } of ready) if (short !== undefined) bought.set(what, amount(short));
  const buy = [...bought].map(([what, much]) => `${much} ${what}`.trim());
  const counts = ready.filter(({ needed: much }) => typeof much === 'number');
  const busy = plan.schedule.resources.flatMap(({ resource, busyUntilMinute: busyUntil }) =>
    busyUntil === undefined ? [] : [say('busy.machine', { machine: resource, time: clock.when(busyUntil, 0) })],
  );
  const aside = [
    ...keptFresh.map(({ lot, raw }) => say('aside.fresh', { weight: measure.batch(raw, 'nearest'), lot })),
    ...notSound.map(({ lot, raw }) => say('aside.bad', { weight: measure.batch(raw, 'nearest'), lot })),
  ];
  return [
    {
      label: say('head.buy'),
      text: buy.length === 0 ? say('head.nothing') : [...buy, say('head.rest')].join(say('dot')),
    },
    {
      label: say('head.count'),
      text: products
        .map((product, index) => say('count.line', { letter: letter(index), text: countOf(product) }))
        .join(say('dot')),
    },
    ...(counts.length === 0
      ? []
      : [
          {
            label: say('head.ready'),
            text: [
              ...counts.map(({ what, needed: much }) => counted(much as number, what)),
              ...(products.some(({ canning }) => canning !== undefined)
                ? [say('ready.cool', { space: measure.length({ value: ruleFigures('jar-spacing').low, unit: 'in' }) })]
                : []),
            ].join(say('dot')),
          },
        ]),
    ...(busy.length === 0 ? [] : [{ label: say('head.busy'), text: busy.join(say('dot')) }]),
    ...(aside.length === 0 ? [] : [{ label: say('head.aside'), text: aside.join(say('dot')) }]),
  ];
}

/** What can be counted on: `5 pint jars of pear halves`, `frozen corn: 7 packs of 1 lb`. */
function countOf(product: PlannedProduct): string {
  const { promised, unit, plural } = product.units;
  const count = counted(promised, promised === 1 ? unit : plural);
  return say(product.canning === undefined ? 'count.other' : 'count.jars', { count, name: called(product) });
}

/** At most three cautions, dangers first, each before the first row that it protects. */
function withCautions(plan: FeasibleDay, rows: readonly Open[]): { rows: Open[]; said: Set<string> } {
  const known = new Map<string, { caution: Caution; products: Set<string> }>();
  for (const product of plan.products) {
    for (const caution of product.cautions) {
      const found = known.get(caution.id) ?? { caution, products: new Set<string>() };
      found.products.add(product.name);
      known.set(caution.id, found);
    }
  }
  const ranked = BESIDE.flatMap(({ id, beside }) => {
    const found = known.get(id);
    if (found === undefined || beside === undefined) return [];
    const row = rows.find(
      ({ kinds, products }) => kinds.includes(beside) && products.some((name) => found.products.has(name)),
    );
    return row === undefined ? [] : [{ ...found, row }];
  }).sort((one, other) => Number(other.caution.severity === 'danger') - Number(one.caution.severity === 'danger'));
  const texts = new Set<string>();
  const chosen = ranked.filter(({ caution }) => {
    const text = saysOf(caution);
    return texts.size < MOST_CAUTIONS && !texts.has(text) && texts.add(text);
  });
  return {
    rows: rows.flatMap((row) => [
      ...chosen.filter((each) => each.row === row).map(({ caution }) => notice(row, 'caution', caution.text)),
      row,
    ]),
    said: new Set([
      ...chosen.map(({ caution }) => saysOf(caution)),
      ...BESIDE.filter(({ card }) => card).map(({ id }) => id),
    ]),
  };
}
const notice = (row: Open, kind: Row['kind'], text: string): Open => ({
  ...row,
  kind,
  hands: text,
  time: '',
  boxes: [],
  stove: [],
  canner: [],
  trays: [],
  loads: [],
  tasks: [],
  kinds: [],
  key: '',
});

const daysText = (clock: Clock, day: number, last: number): string =>
  day === last ? clock.dayName(day) : say('day.span', { from: clock.dayName(day), to: clock.dayName(last) });

/** Breaks, and the name of each further day, or of the days whose rows are the same. */
function withDays({ plan, clock }: Pen, rows: readonly Open[]): Row[] {
  const { windows } = plan.schedule;
  const found: Row[] = [];
  const breaks = windows.flatMap(({ endMinute: to, day }, index) => {
    const next = windows[index + 1];
    return next !== undefined && next.day === day && next.startMinute > to ? [{ at: to, until: next.startMinute }] : [];
  });
  let day = clock.day(0);
  let lastDay = day;
  for (const row of rows) {
    while (breaks.length > 0 && (breaks[0] as { at: number }).at <= row.at) {
      const { at, until } = breaks.shift() as { at: number; until: number };
      const text = say('row.break', { time: clock.time(until) });
      found.push({ ...notice(row, 'break', text), at, letters: '', time: clock.time(at) });
    }
    const last = clock.day(row.starts.at(-1) ?? row.at);
    if (clock.day(row.at) !== day || last !== lastDay) {
      [day, lastDay] = [clock.day(row.at), last];
      found.push({ ...notice(row, 'day', daysText(clock, day, last)), letters: '' });
    }
    found.push(row);
  }
  return found;
}
