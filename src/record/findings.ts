/** What to do about each kind of broken rule. */
import type { Quantity } from '../quantity/types';
import { type Basis, joinBasis } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import { figureOf, MISTAKES, rowNamed } from './tables';

/**
 * `mistake`: the process was not the tested one, or the record shows that the food does not keep as it is. `untested`:
 * no tested process of these tables is for this food. `seal`: jars that did not seal. `missing`: the record leaves open
 * whether a rule was kept. `quality`: safe, but not as good. `entry`: the record itself has an error.
 */
export type FindingKind = 'mistake' | 'untested' | 'seal' | 'missing' | 'quality' | 'entry';

/** A rule that a record breaks. */
export interface RuleBroken {
  /** Fixed name of the rule: `process-too-short`, `jars-not-sealed`. */
  readonly id: string;
  /** How it is broken. */
  readonly kind: FindingKind;
  /** The field of the record: `process.minutes`, `headspaces[1]`. */
  readonly field: string;
  /** What the record says. */
  readonly found: string;
  /** What it should say. */
  readonly wanted: string;
  /** Where the rule comes from. */
  readonly basis: readonly Basis[];
}

/** What can be done with the food. */
export type Remedy = 'reprocess' | 'refrigerate' | 'freeze' | 'discard';

/** What a review found, and what to do about it. */
export interface Finding extends RuleBroken {
  /** What you can do with the food now; empty where you need not do anything with it. */
  readonly remedies: readonly Remedy[];
  /** What to do, in words. */
  readonly next: readonly string[];
  /** Time left for every remedy but throwing it out: from now, or from the end of processing where that is not known. */
  readonly timeLeft?: Quantity<'time'>;
}

const mistake = (id: string) => rowNamed(MISTAKES, id);

/** What you can still do about a wrong process these hours after it; all of it where the hours are not known. */
export function remedyMistake(broken: RuleBroken, hours: number | undefined): Finding {
  const again = mistake('can-again-within');
  const chill = mistake('chill-within');
  const untested = broken.kind === 'untested';
  const early = figureOf(again, 'hours') - (hours ?? 0);
  const late = figureOf(untested ? again : chill, 'hours') - (hours ?? 0);
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
        ? [`In the first ${again.hours} h it is only hot food: eat it, refrigerate it or freeze it.`]
        : []),
    ],
    ...(late >= 0 ? { timeLeft: { value: late, unit: 'h' as const } } : {}),
    basis: joinBasis(
      broken.basis,
      rows.map((row) => basisOf(row, 'next', row.text)),
      untested ? [practiceBasis('next', 'the first hours, as hot food')] : [],
    ),
  };
}

/** A finding that leaves the food as it is, with what to do. */
export const note = (broken: RuleBroken, ...next: readonly string[]): Finding => ({ ...broken, remedies: [], next });
