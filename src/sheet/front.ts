import * as z from 'zod/mini';
import table from '../../data/sheet/beside.json';
import type { FeasibleDay, ToReady } from '../plan/request/dayPlan';
import { TASK_KINDS } from '../plan/request/daySchedule';
import { ruleFigures } from '../process/canningRules';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { id, practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { letter } from './clock';
import type { Pen } from './pen';
import { withAllAlike, withRounds } from './repeats';
import { type Open, rowsOf } from './rows';
import type { Front, Line, Row } from './sheet';
import { say } from './words';

export const besideRow = () =>
  z.strictObject({
    id: id(),
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

/** The most cautions of a front, and the most rows that are each done once before rows alike are put together. */
const MOST_CAUTIONS = 3;
const MOST_ROWS = 40;

/** The front page, and the cautions that it and the cards have said. */
export function frontOf(
  pen: Pen,
  title: string | undefined,
  dated: boolean,
): { front: Front; said: ReadonlySet<string> } {
  const { plan, clock } = pen;
  const each = rowsOf(pen);
  const rounds = withRounds(each);
  const rows = rounds.length > MOST_ROWS ? withAllAlike(rounds, ({ at }) => clock.day(at)) : rounds;
  const { rows: cautioned, said } = withCautions(plan, rows);
  return {
    front: {
      head: headOf(pen, title, dated),
      invented: plan.invented,
      lines: linesOf(pen),
      rows: withDays(pen, cautioned),
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
        .map(({ name, units, canning: jars }, index) => {
          const many = `${units.promised} ${units.promised === 1 ? units.unit : units.plural}`;
          const text = jars === undefined ? `${name}: ${many}` : `${units.promised} ${name}`;
          return say('count.line', { letter: letter(index), text });
        })
        .join(say('dot')),
    },
    ...(counts.length === 0
      ? []
      : [
          {
            label: say('head.ready'),
            text: [
              ...counts.map(({ what, needed: much }) => `${much} ${what}`),
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
  times: [],
  stove: [],
  canner: [],
  trays: [],
  loads: [],
  tasks: [],
  kinds: [],
  key: '',
});

/** Breaks, and the name of each further day. */
function withDays({ plan, clock }: Pen, rows: readonly Open[]): Row[] {
  const { windows } = plan.schedule;
  const found: Row[] = [];
  const breaks = windows.flatMap(({ endMinute: to, day }, index) => {
    const next = windows[index + 1];
    return next !== undefined && next.day === day && next.startMinute > to ? [{ at: to, until: next.startMinute }] : [];
  });
  let day = clock.day(0);
  for (const row of rows) {
    while (breaks.length > 0 && (breaks[0] as { at: number }).at <= row.at) {
      const { at, until } = breaks.shift() as { at: number; until: number };
      const text = say('row.break', { time: clock.time(until) });
      found.push({ ...notice(row, 'break', text), at, letters: '', times: [clock.time(at)] });
    }
    if (clock.day(row.at) !== day) {
      day = clock.day(row.at);
      found.push({ ...notice(row, 'day', clock.dayName(day)), letters: '' });
    }
    found.push(row);
  }
  return found;
}

/** Four numbers that make the next plan better, and what tomorrow brings. */
function footOf({ plan, clock, measure }: Pen): Line[] {
  const { products, schedule } = plan;
  const unit = measure.massUnit;
  const jars = products.some((product) => product.canning !== undefined);
  const dryer = products.some(({ drying: trays }) => trays?.where === 'dryer');
  const write = [
    say('write.ready', { unit }),
    jars ? say('write.jars') : say('write.packs'),
    say('write.minutes'),
    dryer ? say('write.dryer') : jars ? say('write.boil') : say('write.left', { unit }),
  ];
  const packed = new Set(
    schedule.tasks.filter(({ kind }) => kind === 'pack').flatMap(({ forProducts: names }) => names),
  );
  const later = products.flatMap(({ name, drying: trays }, index) => {
    const own = schedule.tasks.filter((task) => task.forProducts.includes(name));
    const ends = own.filter(({ kind }) => kind === 'dry' || kind === 'freeze-dry').map(({ endMinute: end }) => end);
    const frozen = own.filter(({ kind }) => kind === 'freeze').map(({ endMinute: end }) => end);
    const at = (minutes: readonly number[]) => clock.when(Math.max(...minutes), 0);
    return [
      ...(ends.length > 0 && !packed.has(name)
        ? [
            say(trays?.where === 'freeze-dryer' ? 'tomorrow.freeze-dry' : 'tomorrow.dry', {
              letter: letter(index),
              time: at(ends),
            }),
          ]
        : []),
      ...(frozen.length > 0 ? [say('tomorrow.freeze', { letter: letter(index), time: at(frozen) })] : []),
      ...(own.some(({ kind }) => kind === 'ferment') ? [say('tomorrow.ferment', { letter: letter(index) })] : []),
    ];
  });
  const { low, high } = ruleFigures('cool-jars');
  const cooled = say('range', { from: low / 60, to: high / 60 });
  const sealed = jars
    ? [say('tomorrow.cool', { hours: cooled }), say('tomorrow.press'), say('tomorrow.wipe')]
    : later.length === 0
      ? [say('tomorrow.nothing')]
      : [];
  return [
    { label: say('foot.write'), text: write.join(say('dot')) },
    { label: say('foot.tomorrow'), text: [...sealed, ...later].map((text) => `${say('box')} ${text}`).join('  ') },
  ];
}
