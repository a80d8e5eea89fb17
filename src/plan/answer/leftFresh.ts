import type { Reason } from '../../sources/no';
import type { Kept } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { LeftFresh } from '../request/dayPlan';
import { leftShares } from './lotShares';
import { type Used, whyNoMore } from './whyNoMore';

/** What goes into no product, though it could have, and why. */
export function leftFresh(used: Used & { readonly prepared: Prepared }, kept: readonly Kept[]): LeftFresh[] {
  const { prepared } = used;
  return leftShares(prepared, kept).map(([share, { index }]) => {
    const makings = prepared.makings.filter(
      ({ activity }) => activity.madeOf === 'fruit' && activity.supplies.some(({ lot }) => lot === index),
    );
    return { ...share, reason: together(makings.map((making) => [making.label, whyNoMore(making, used)])) };
  });
}

/** The reasons of several products as one: those in the same words stand together. */
function together(reasons: readonly (readonly [string, Reason])[]): Reason {
  const groups = new Map<string, { reason: Reason; names: string[] }>();
  for (const [name, reason] of reasons) {
    const group = groups.get(reason.text) ?? { reason, names: [] };
    group.names.push(name);
    groups.set(reason.text, group);
  }
  const [first, ...others] = [...groups.values()].sort((one, other) => other.names.length - one.names.length);
  if (first === undefined) return { code: 'no-product', text: 'no product of this plan takes it' };
  const { code } = first.reason;
  const words = [first, ...others].map(({ names, reason }) => `${names.join(', ')}: ${reason.text}`);
  return { code, text: words.join('; ') };
}
