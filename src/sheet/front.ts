import type { FeasibleDay } from '../plan/request/dayPlan';
import { BESIDE, cautionsOf, kindBeside, SAID_ELSEWHERE, saysOf } from './beside';
import type { Clock } from './clock';
import { footOf } from './foot';
import type { Pen } from './pen';
import { linesOf } from './readyLines';
import { withRepeats } from './repeats';
import { type Open, rowsOf } from './rows';
import type { Front, Row } from './sheet';
import { say } from './words';

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

/** The most cautions of a front. */
const MOST_CAUTIONS = 3;

/** At most three cautions, dangers first, each before the first row that it protects. */
function withCautions({ products }: FeasibleDay, rows: readonly Open[]): { rows: Open[]; said: Set<string> } {
  const ranked = BESIDE.flatMap((each) => {
    const places = products.flatMap((product) => {
      const caution = cautionsOf(product).find(({ id }) => id === each.id);
      const kind = kindBeside(each, product);
      const row = rows.find(
        ({ kinds, products: names }) => kinds.some((own) => own === kind) && names.includes(product.name),
      );
      return caution === undefined || row === undefined ? [] : [{ caution, row }];
    });
    const [first] = places.sort((one, other) => rows.indexOf(one.row) - rows.indexOf(other.row));
    return first === undefined ? [] : [first];
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
    said: new Set([...chosen.map(({ caution }) => saysOf(caution)), ...SAID_ELSEWHERE]),
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
