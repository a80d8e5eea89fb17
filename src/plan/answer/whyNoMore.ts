import type { Reason } from '../../sources/no';
import type { Fitted } from '../fit/fitDay';
import type { Making } from '../makes/making';
import { amountIn, loads, type Resource, raw, readied } from '../program/decisions';
import { useOf } from '../program/limits';
import type { Prepared } from '../program/prepare';
import { weightsOf } from '../program/program';
import { cannersFor } from '../program/resources/canners';
import type { Activity } from '../request/activity';
import type { Stock } from '../request/stock';

/** What a plan used, and what it left. */
export interface Used {
  readonly prepared: Pick<Prepared, 'program' | 'request' | 'makings' | 'capacity'>;
  readonly plan: Pick<Fitted, 'found' | 'solved' | 'program'>;
  /** Kg that each lot has left. */
  readonly leftKg: readonly number[];
}

const because = (code: string, text: string): Reason => ({ code, text });

/** Why a plan makes no more of a product than it does: what has run out, or that no time was found for it. */
export function whyNoMore({ activity, unit }: Making, used: Used): Reason {
  const { prepared, plan } = used;
  const { worth, waste, money } = weightsOf(prepared.request.aim ?? 'most worth');
  const ready = amountIn(plan.found.values, readied(activity.product));
  if (worth + waste === 0)
    return because(
      'not-required',
      `nothing requires more of it, and it would take time${money > 0 ? ' or money' : ''}`,
    );
  if (ready >= activity.most) return because('most', `you want no more than ${activity.most} of it`);
  const more = ready > 0 ? 1 : (activity.smallest ?? 1);
  const some = activity.unitsPerBatch ?? more;
  const few = some === 1 ? `one more ${unit}` : `${some} more`;
  const units = activity.supplies.reduce(
    (sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (used.leftKg[lot] ?? 0),
    0,
  );
  if (units < some) return because('too-little-fruit', `what is left gives less than ${few}`);
  const short = (activity.also ?? []).some(({ lot, kgPerUnit }) => some * kgPerUnit > (used.leftKg[lot] ?? 0));
  if (short) return because('too-little-of-another-lot', `too little of another food that goes into it for ${few}`);
  const out = ranOut(activity, some, used);
  if (out.length > 0) return because('used-up', `not enough ${out.join(' and ')} for ${few}`);
  return plan.found.optimal
    ? because('others-worth-more', 'the stock and the hours are worth more in other products')
    : because('no-time-found', 'no order of work was found with time for more of it');
}

/** What has too little left for these units more, in a cook's words. */
function ranOut(activity: Activity, units: number, { prepared, plan }: Used): string[] {
  const { program } = prepared;
  const { values } = plan.found;
  const { supplies, product } = activity;
  const kg = units / Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.low));
  // as many to ready as the fruit may give at the rich end
  const before = supplies.reduce(
    (sum, each) => sum + each.unitsPerKg.high * amountIn(values, raw(each.lot, product)),
    0,
  );
  const richest = Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.high));
  const rich = Math.ceil(before + kg * richest - 1e-6) - amountIn(values, readied(product));
  const lacks = (resource: Resource, amount: number): boolean => {
    const use = useOf(program, values, resource);
    return use !== undefined && use.used + amount > use.available + 1e-6;
  };
  const { cook, freezeDry, traysPerKg = 0, trayShare = 1 } = activity;
  const cutAndFilled = activity.handsPerKg * kg + activity.handsPerUnit * rich;
  const inTime = program.bounds.flatMap(({ of }) =>
    of.of === 'hands in time' && activity.canning !== undefined ? [of] : [],
  );
  const pots = program.bounds.flatMap(({ of }) => (of.of === 'pot' ? [of] : []));
  return [
    ...activity.stockPerUnit.flatMap(({ stock, amount }) =>
      lacks({ of: 'stock', stock }, amount * rich) ? [stockInWords(stock)] : [],
    ),
    ...(lacks({ of: 'dryer trays' }, kg * traysPerKg * trayShare) ? ['dryer trays'] : []),
    ...(freezeDry !== undefined &&
    (lacks({ of: 'freeze-dryer trays' }, kg * freezeDry.traysPerKg) ||
      lacks({ of: 'freeze-dryer ice' }, kg * freezeDry.waterPerKg))
      ? ['freeze-dryer trays']
      : []),
    ...([{ of: 'hands' } as const, ...inTime].some((each) => lacks(each, cutAndFilled)) ? ['minutes of hands'] : []),
    ...(cook !== undefined && pots.length > 0 && pots.every((pot) => lacks(pot, cook.minutes))
      ? ['minutes of the pots']
      : []),
    ...(noLoadLeft(activity, rich, { prepared, plan }, lacks) ? ['minutes of the canner'] : []),
  ];
}

/** Whether no canner has a place left in its loads, nor minutes for one more. */
function noLoadLeft(
  { canning }: Activity,
  units: number,
  { prepared, plan }: Pick<Used, 'prepared' | 'plan'>,
  lacks: (resource: Resource, amount: number) => boolean,
): boolean {
  if (canning === undefined) return false;
  const { values } = plan.found;
  const group = prepared.makings.map(({ activity }) => activity).filter((each) => each.canning?.key === canning.key);
  const canners = cannersFor(group);
  const places = canners.reduce(
    (sum, { canner, jars }) => sum + jars * amountIn(values, loads(canning.key, canner)),
    0,
  );
  const jars = group.reduce((sum, { product }) => sum + amountIn(values, readied(product)), 0);
  if (places >= jars + units) return false;
  return canners.every(({ canner, minutes }) => lacks({ of: 'canner', canner }, minutes));
}

function stockInWords(stock: Stock): string {
  switch (stock.of) {
    case 'jars':
      return `${stock.jar} jars`;
    case 'freezer room':
      return 'room in the freezer';
    case 'freezer load':
      return 'freezing of a day';
    default:
      return stock.of;
  }
}
