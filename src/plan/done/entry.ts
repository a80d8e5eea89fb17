/** What one entry of `done` comes to: product, lot, kilograms, and how long it has waited. */
import { nameKey, nearestNames } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { longestWait } from '../check/waits';
import { fromStart, startOf, windowsOf } from '../kitchen/hours';
import { cannersOf } from '../kitchen/kitchen';
import { type Day, isMaking, type Made, type Making } from '../makes/making';
import type { Held } from '../request/activity';
import { amountsRatio, kilograms, weightOf } from '../request/lotAmounts';
import type { KnownLot } from '../request/lots';
import { DAY } from '../request/planFields';
import type { Kitchen, PlanDayInput, PlanRequest } from '../request/planInput';
import { placeOf } from './kitchenLeft';

export type Entry = NonNullable<PlanRequest['done']>[number];
type State = NonNullable<Entry['howFar']>;

/** Nobody tells of food that has stood for longer: a time after now was meant. */
const LONGEST_SINCE = DAY / 2;

/** What one entry of `done` comes to. */
export interface Happened {
  /** Its place in `done`. */
  readonly index: number;
  /** Further entries that are one with it: jars of one product that are filled. */
  readonly more?: readonly number[];
  /** Place of its product in the list of products. */
  readonly product: number;
  readonly label: string;
  readonly state: State;
  readonly lot: number;
  readonly kg: number;
  readonly units: number;
  /** Whether these are jars for the canner. */
  readonly jars: boolean;
  /** Where it is in work: since when, and when it may go on. */
  readonly held?: Held;
  /** Where it runs: until when, in which canner, on how many trays. */
  readonly until?: number;
  readonly canner?: string;
  readonly trays?: number;
}

/** A time of day as people write it, with the day where it is not the first. */
const clockText = (kitchen: Kitchen, minute: number): string => {
  const clock = startOf(kitchen) + minute;
  const text = `${Math.floor((clock % DAY) / 60)}:${String(clock % 60).padStart(2, '0')}`;
  const day = Math.floor(minute / DAY) + 1;
  return day > 1 ? `${text} of day ${day}` : text;
};

/** The minute that it is now. */
export function nowOf(kitchen: Kitchen, { clock, day }: NonNullable<PlanRequest['now']>, given: unknown): number {
  const now = (day - 1) * DAY + fromStart(kitchen, clock);
  const windows = windowsOf(kitchen);
  const end = Math.max(...windows.map(({ endMinute: to }) => to));
  if (now >= end)
    fail('CONTRADICTION', 'now', given, `a time before the hours of work end, ${clockText(kitchen, end)}`);
  return now;
}

/** The day that entries are of. */
export interface Known {
  readonly day: Day;
  readonly made: readonly Made[];
  readonly names: readonly string[];
  readonly now: number;
  readonly input: PlanDayInput;
}

/** Reads one entry. */
export function happenedOf({ day, made, names, now, input }: Known, entry: Entry, index: number): Happened {
  const path = `done[${index}]`;
  const product = names.findIndex((label) => nameKey(label) === nameKey(entry.name));
  const making = made[product];
  if (making === undefined || !isMaking(making)) {
    const options = names.filter((_, place) => isMaking(made[place] as Made));
    const nearest = nearestNames(entry.name, options);
    return fail('UNKNOWN_NAME', `${path}.name`, entry.name, 'a product of the plan', { options, nearest });
  }
  const { kitchen } = day.request;
  const state = stateOf(entry, making, path);
  const units = entry.filled ?? 0;
  const lot = lotOf(day, entry, making, path);
  const kg = kgOf(day, entry, making, lot, input.done?.[index] as { raw?: unknown } | undefined, path);
  const held = heldOf(kitchen, entry, state, making, { now, kg, path });
  return {
    index,
    product,
    label: names[product] as string,
    state,
    lot,
    kg,
    units,
    jars: making.activity.canning !== undefined,
    ...(held === undefined ? {} : { held }),
    ...(state === 'running' ? runningOf(kitchen, entry, making, now, path) : {}),
  };
}

function stateOf({ howFar: state, until, filled, since, trays }: Entry, { activity }: Making, path: string): State {
  const own = state ?? (until === undefined ? 'done' : 'running');
  const rests = activity.canning === undefined && activity.traysPerKg === undefined && activity.freezeDry === undefined;
  if (own === 'running') {
    if (rests) return 'done'; // the freezer and the crock need nobody
    if (until === undefined) fail('MISSING', `${path}.until`, undefined, 'when it is done, such as "11:10"');
    if (activity.canning !== undefined && filled === undefined)
      fail('MISSING', `${path}.filled`, undefined, 'how many jars are in this load');
    if (activity.traysPerKg !== undefined && trays === undefined)
      fail('MISSING', `${path}.trays`, undefined, 'how many trays it is on');
    return own;
  }
  if (until !== undefined)
    fail('CONTRADICTION', `${path}.howFar`, own, '"running", since it is done at a time to come');
  if (own === 'done') return own;
  if (since === undefined) fail('MISSING', `${path}.since`, undefined, `since when it is ${own}, such as "10:05"`);
  if (own === 'hot' && (activity.cook === undefined || activity.cook.blanch !== undefined))
    fail('CONTRADICTION', `${path}.howFar`, own, '"prepared" or "filled": it is not kept in a pot');
  if (own === 'filled') {
    if (filled === undefined || filled === 0)
      fail('MISSING', `${path}.filled`, filled, 'how many jars, bags or trays are filled');
    if (activity.canning === undefined && activity.after?.kind !== 'freeze' && rests) return 'done';
  }
  return own;
}

/** The lot that went in: the only one, or the one that was named. */
function lotOf(day: Day, { lot }: Entry, { activity, label }: Making, path: string): number {
  const own = [...activity.supplies, ...(activity.also ?? [])].map((each) => day.lots[each.lot] as KnownLot);
  const labels = own.map((each) => each.label);
  if (lot === undefined) {
    if (activity.supplies.length > 1)
      fail('MISSING', `${path}.lot`, undefined, 'which lot went in', { options: labels });
    return (own[0] as KnownLot).index;
  }
  const place = labels.some((each) => nameKey(each) === nameKey(lot))
    ? labels
    : own.map(({ trade, label: each }) => (nameKey(trade) === nameKey(lot) ? trade : each));
  return (own[placeOf(lot, place, `${path}.lot`, `a lot that goes into ${label}`)] as KnownLot).index;
}

/** Raw kg that went in: the figure the cook gives, or what the filled units take at the likely yield. */
function kgOf(
  { lots, request }: Day,
  { raw, filled = 0, howFar: state }: Entry,
  { activity }: Making,
  lot: number,
  input: { readonly raw?: unknown } | undefined,
  path: string,
): number {
  const { food, rawKg } = lots[lot] as KnownLot;
  if (raw !== undefined) {
    const ratio = amountsRatio(raw, (request.lots[lot] as PlanRequest['lots'][number]).raw);
    if (ratio !== undefined) return ratio.toNumber() * rawKg.likely;
    return kilograms(weightOf(food, raw, `${path}.raw`, input?.raw)).likely;
  }
  const supply = activity.supplies.find((each) => each.lot === lot);
  if (filled === 0 || supply === undefined || state === 'prepared')
    fail('MISSING', `${path}.raw`, undefined, 'how much raw food went in, such as "20 lb"');
  return filled / supply.unitsPerKg.likely;
}

function heldOf(
  kitchen: Kitchen,
  { since: clock }: Entry,
  state: State,
  { activity }: Making,
  { now, kg, path }: { readonly now: number; readonly kg: number; readonly path: string },
): Held | undefined {
  if (state === 'done' || state === 'running' || clock === undefined) return undefined;
  const nowClock = startOf(kitchen) + now;
  const waited = (((nowClock - clock) % DAY) + DAY) % DAY;
  const since = now - waited;
  if (since < 0 || waited > LONGEST_SINCE) {
    const expected = `a time of day before now, ${clockText(kitchen, now)}, since ${clockText(kitchen, Math.max(0, now - LONGEST_SINCE))}`;
    fail('CONTRADICTION', `${path}.since`, clockText({ start: 0 } as Kitchen, clock), expected);
  }
  const { soak = 0, cook, canning, freezeDry } = activity;
  if (state === 'prepared')
    return { state, kg, since, from: Math.max(now, since + soak), by: since + soak + longestWait('prepared') };
  if (state === 'hot') {
    const litres = (cook?.litresPerKg ?? 0) * kg;
    return { state, kg, since, from: now, by: since + Math.min(cook?.holdsHot ?? 0, longestWait('hot-sauce')), litres };
  }
  // trays for the freeze-dryer wait in the freezer
  const by = freezeDry === undefined ? since + longestWait(canning ? 'filled-jar' : 'filled-tray') : since + 7 * DAY;
  return { state, kg, since, from: now, by };
}

function runningOf(
  kitchen: Kitchen,
  { until, canner, trays }: Entry,
  { activity }: Making,
  now: number,
  path: string,
): Pick<Happened, 'until' | 'canner' | 'trays'> {
  const minute = untilOf(kitchen, until, now, activity.canning !== undefined);
  // the freeze-dryer is busy whatever it holds
  if (activity.canning === undefined)
    return { until: minute, ...(trays === undefined || activity.traysPerKg === undefined ? {} : { trays }) };
  const labels = cannersOf(kitchen).map(({ label }) => label);
  const own = activity.canning.canners.map((each) => labels[each.canner] as string);
  if (canner === undefined && own.length > 1)
    fail('MISSING', `${path}.canner`, undefined, 'which canner its load is in', { options: own });
  const place = canner === undefined ? 0 : placeOf(canner, own, `${path}.canner`, 'a canner that its process runs in');
  return { until: minute, canner: own[place] as string };
}

/** When it is done. A load that was done a little before now is done now: no canner runs for half a day. */
function untilOf(kitchen: Kitchen, until: Entry['until'], now: number, isLoad: boolean): number {
  if (until === undefined) return now;
  if ('after' in until) return now + Math.ceil(until.after);
  const left = (((until.clock - startOf(kitchen) - now) % DAY) + DAY) % DAY;
  return isLoad && left > LONGEST_SINCE ? now : now + left;
}
