/** What to do about each kind of broken rule. */
import type { Quantity } from '../quantity/types';
import { type Basis, joinBasis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { mistakeRows, ruleNamed } from './tables';

/**
 * `mistake`: the process was not the tested one, or the record shows that the food does not keep as it is. `untested`:
 * no tested process of these tables is for this food. `seal`: jars that did not seal.
 * `missing`: the record leaves open whether a rule was kept. `quality`: safe, but worse for it. `entry`: the record
 * itself is in want of something.
 */
export type FindingKind = 'mistake' | 'untested' | 'seal' | 'missing' | 'quality' | 'entry';

/** A rule that a record breaks. */
export interface RuleBroken {
  readonly rule: string;
  readonly kind: FindingKind;
  /** The field of the record. */
  readonly field: string;
  readonly found: string;
  readonly wanted: string;
  readonly basis: readonly Basis[];
}

/** What can be done with the food. */
export type Remedy = 'reprocess' | 'refrigerate' | 'freeze' | 'discard';

export interface Finding extends RuleBroken {
  /** What may be done with the food now; empty where nothing need be. */
  readonly remedies: readonly Remedy[];
  /** The same in words. */
  readonly next: readonly string[];
  /** Time left for all remedies but throwing it out, from the end of processing or, where known, from now. */
  readonly within?: Quantity<'time'>;
}

const mistake = (rule: string) => ruleNamed(mistakeRows, rule);

/** What remains to be done about a wrong process so many hours after it; all of it where the hours are not known. */
export function remedyMistake(broken: RuleBroken, hours: number | undefined): Finding {
  const again = mistake('can-again-within');
  const chill = mistake('chill-within');
  const untested = broken.kind === 'untested';
  const early = (again.hours as number) - (hours ?? 0);
  const late = ((untested ? again : chill).hours as number) - (hours ?? 0);
  const rows = [
    ...(early >= 0 && !untested ? [again, mistake('new-start')] : []),
    ...(late >= 0 && !untested ? [chill] : []),
    ...(untested ? [mistake('untested')] : hours === undefined || late < 0 ? [mistake('discard-after')] : []),
    mistake('sealed-is-not-safe'),
  ];
  const remedies: Remedy[] = [
    ...(early >= 0 && !untested ? ['reprocess' as const] : []),
    ...(late >= 0 ? ['refrigerate' as const, 'freeze' as const] : []),
    ...(hours === undefined || late < 0 ? ['discard' as const] : []),
  ];
  return {
    ...broken,
    remedies,
    next: [
      ...rows.map(({ text }) => text),
      ...(untested && late >= 0
        ? [`In the first ${again.hours} h it is hot food like any other: eat it, refrigerate it or freeze it.`]
        : []),
    ],
    ...(late >= 0 ? { within: { value: late, unit: 'h' as const } } : {}),
    basis: joinBasis(
      broken.basis,
      rows.map((row) => basisOf(row, `what to do: ${row.rule}`)),
      untested ? [{ of: 'the first hours, as hot food', kind: 'common-practice' }] : [],
    ),
  };
}

/** A finding that calls for no remedy of the food, with what to do instead. */
export const note = (broken: RuleBroken, ...next: readonly string[]): Finding => ({ ...broken, remedies: [], next });
