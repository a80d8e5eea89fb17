/** What to do with a processed jar by the liquid left in it: it is never opened to be filled up. */
import type { Basis } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import { jarCaution } from './cautions';
import { sealRule } from './tables';

/**
 * `store`: as it is. `use first`: sealed, but with less liquid. `refrigerate`: too little liquid; eat it within days.
 * `test the seal`: a seal decides, see `checkSeal`. `measure the liquid`: the share that is gone decides.
 * `discard`: too little liquid, found too late.
 */
export type Handling = 'store' | 'use first' | 'refrigerate' | 'test the seal' | 'measure the liquid' | 'discard';

export interface JarHandling {
  readonly handling: Handling;
  readonly next: readonly string[];
  readonly basis: readonly Basis[];
}

const NEAR = 1e-9;

/** The rules that say what to do, in the order to read them. */
const RULES: Readonly<Record<Handling, readonly string[]>> = {
  store: ['never-refill', 'level-falls', 'floating-fruit'],
  'use first': ['never-refill', 'less-than-half-lost', 'liquid-may-darken', 'floating-fruit'],
  refrigerate: ['never-refill', 'half-the-liquid', 'more-than-half-lost'],
  'test the seal': ['never-refill', 'cool-first', 'press', 'less-than-half-lost', 'reprocess-within'],
  'measure the liquid': ['never-refill', 'less-than-half-lost', 'half-the-liquid', 'more-than-half-lost'],
  discard: ['never-refill', 'half-the-liquid'],
};

interface ProcessedJar {
  /** Whether the food or liquid stands lower than it was filled. */
  readonly low: boolean;
  /** Share of the liquid that is gone. */
  readonly liquidLost?: number | undefined;
  readonly sealed?: boolean | undefined;
  /** Hours since it came out of the canner. */
  readonly hours?: number | undefined;
}

function handlingOf({ low, liquidLost, sealed, hours }: ProcessedJar): Handling {
  const half = sealRule('half-the-liquid').least as number;
  if (liquidLost !== undefined && liquidLost >= half - NEAR) {
    return hours !== undefined && hours > (sealRule('reprocess-within').most as number) ? 'discard' : 'refrigerate';
  }
  if (low && liquidLost === undefined) return 'measure the liquid';
  if (sealed !== true) return 'test the seal';
  return low || (liquidLost ?? 0) > 0 ? 'use first' : 'store';
}

/** What a processed jar is good for, by what is left in it. */
export function handleProcessed(jar: ProcessedJar): JarHandling {
  const handling = handlingOf(jar);
  const rules = RULES[handling].map(sealRule);
  const late = handling === 'discard';
  return {
    handling,
    next: [...rules.map(({ text }) => text), ...(late ? [jarCaution('liquid-lost-late').text] : [])],
    basis: [
      ...rules.map((row) => basisOf(row, 'next')),
      ...(late ? [practiceBasis('handling', 'throw out what you find later')] : []),
    ],
  };
}
