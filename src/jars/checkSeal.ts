import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, flag, optional, readInput, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf, practiceBasis } from '../sources/table';
import { jarCaution } from './cautions';
import { sealRule } from './tables';

const schema = /* @__PURE__ */ fields({
  /** Time since the jar came out of the canner. */
  sinceProcessing: time({ min: { value: 0, unit: 'h' } }),
  /** The middle of the lid stays down when pressed. */
  buttonDown: optional(flag('whether the middle of the lid stays down when pressed')),
  /** At eye level: `concave`, `flat` or `bulging`. */
  lid: optional(choice('the lid at eye level', ['concave', 'flat', 'bulging'])),
  /** The closed jar leaks, or spurts when opened; `false` alone is no test of a seal. */
  leaking: optional(flag('whether the closed jar leaks, or spurts when it is opened')),
  /** A ringing note under a spoon. */
  ringsWhenTapped: optional(flag('whether the lid rings when tapped with a spoon')),
  /** With the band off, the jar hangs from its lid. */
  holdsByLid: optional(flag('whether the jar hangs from its lid with the band off')),
});
export type CheckSealInput = z.input<typeof schema>;

export interface SealCheck {
  /** What the tests say; `discard`: the lid bulges or the jar leaks, so its food is spoiled: never process it again. */
  readonly verdict: 'sealed' | 'not sealed' | 'doubtful' | 'too early' | 'discard';
  /** The signs that speak for the verdict. */
  readonly because: readonly string[];
  /** What to do now. */
  readonly next: readonly string[];
  /** Time left in which a jar that has not sealed, or may not have, can be processed again. */
  readonly reprocessWithin?: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** One test: what it says when it fails, when it leaves doubt, and the rule it stands on. */
interface Sign {
  readonly said: string;
  readonly speaks: 'for' | 'against' | 'doubt' | 'spoiled';
  readonly basis: Basis;
}

function signsOf(given: {
  buttonDown?: boolean | undefined;
  lid?: 'concave' | 'flat' | 'bulging' | undefined;
  leaking?: boolean | undefined;
  ringsWhenTapped?: boolean | undefined;
  holdsByLid?: boolean | undefined;
}): Sign[] {
  const { buttonDown, lid, leaking, ringsWhenTapped, holdsByLid } = given;
  const signs: Sign[] = [];
  if (buttonDown !== undefined) {
    const basis = basisOf(sealRule('press'), 'because', 'press the lid');
    signs.push(
      buttonDown
        ? { said: 'the middle of the lid stays down', speaks: 'for', basis }
        : { said: 'the middle of the lid springs up', speaks: 'against', basis },
    );
  }
  if (lid !== undefined) {
    const speaks = ({ concave: 'for', flat: 'doubt', bulging: 'spoiled' } as const)[lid];
    signs.push({
      said: `the lid is ${lid}`,
      speaks,
      basis: basisOf(sealRule('look'), 'because', 'look across the lid'),
    });
  }
  // a jar that does not leak may still be open: only leaking tells anything
  if (leaking === true) {
    signs.push({
      said: 'the jar leaks',
      speaks: 'spoiled',
      basis: basisOf(sealRule('spoiled'), 'because', 'signs of spoilage'),
    });
  }
  if (ringsWhenTapped !== undefined) {
    const basis = basisOf(sealRule('tap'), 'because', 'tap the lid');
    signs.push(
      ringsWhenTapped
        ? { said: 'the lid rings when tapped', speaks: 'for', basis }
        : { said: 'the lid sounds dull: no seal, or food touching it', speaks: 'doubt', basis },
    );
  }
  if (holdsByLid !== undefined) {
    const basis = practiceBasis('because', 'hold the jar by its lid, band off, over something soft');
    signs.push(
      holdsByLid
        ? { said: 'the jar hangs from its lid', speaks: 'for', basis }
        : { said: 'the lid comes off when lifted', speaks: 'against', basis },
    );
  }
  return signs;
}

type Verdict = SealCheck['verdict'];
/** The rules that say what to do, by verdict. */
const NEXT: Readonly<Record<Verdict, readonly string[]>> = {
  sealed: [
    'bands-off',
    'no-retightening',
    'store-cool',
    'store-warm',
    'never-above',
    'use-within',
    'check-monthly',
    'frozen-by-accident',
  ],
  'too early': ['cool-first', 'cooling-space', 'no-retightening'],
  doubtful: ['press', 'look', 'tap', 'reprocess-within', 'refrigerate-instead', 'freeze-instead'],
  'not sealed': ['reprocess-within', 'refrigerate-instead', 'freeze-instead'],
  discard: ['spoiled', 'detoxify'],
};
/** What the tests come to; before the jar is cool none counts, and heat alone can bulge a lid. */
function verdictOf(signs: readonly Sign[], early: boolean): Verdict {
  if (early) return 'too early';
  const said = new Set(signs.map(({ speaks }) => speaks));
  if (said.has('spoiled')) return 'discard';
  return said.has('against') ? 'not sealed' : said.has('doubt') ? 'doubtful' : 'sealed';
}

/** The same once the time to process again has passed. */
const NEXT_LATE: typeof NEXT = { ...NEXT, doubtful: ['press', 'look', 'tap'], 'not sealed': [] };

/**
 * Whether a processed jar has sealed, by the usual tests, and what to do with it now.
 *
 * Jars cool 12 to 24 h before the tests count. A lid that springs up or comes off has not sealed; a flat lid or a dull
 * note leaves doubt, and a jar in doubt is treated as unsealed. Within 24 h of processing an unsealed jar can be
 * processed again (full time, new lid), put in the refrigerator or frozen; later it is thrown out. A cooled jar whose
 * lid bulges, or that leaks, is thrown out at once and never processed again.
 *
 * Source: USDA Complete Guide to Home Canning, Guide 1 (press, tap and look, 24 h); AIB 539, Guide 1 (12 to 24 h);
 * University of Georgia Extension (spoiled jars).
 * Holding the jar by its lid, and throwing out what stood unsealed longer than 24 h, are common practice.
 *
 * @throws StillroomError MISSING when no test is given
 *
 * @example
 * ```ts
 * import { checkSeal } from 'stillroom/jars';
 *
 * checkSeal({ sinceProcessing: '14 h', buttonDown: true, holdsByLid: true }).verdict; // => 'sealed'
 * const open = checkSeal({ sinceProcessing: '14 h', buttonDown: false });
 * open.verdict; // => 'not sealed'
 * open.reprocessWithin; // => { value: 10, unit: 'h' }
 * checkSeal({ sinceProcessing: '2 h', buttonDown: false }).verdict; // => 'too early'
 * checkSeal({ sinceProcessing: '14 h', lid: 'bulging' }).verdict; // => 'discard'
 * ```
 */
export function checkSeal(input: CheckSealInput): SealCheck {
  const given = readInput(schema, input);
  const signs = signsOf(given);
  if (signs.length === 0)
    fail(
      'MISSING',
      'buttonDown',
      undefined,
      'at least one test: buttonDown, lid, ringsWhenTapped or holdsByLid; or leaking: true',
    );
  const hours = valueIn(given.sinceProcessing, 'h');
  const cooled = sealRule('cool-first');
  const again = sealRule('reprocess-within');
  const early = hours < (cooled.least as number);
  const left = (again.most as number) - hours;
  const saying = (speaks: Sign['speaks']) => signs.filter((sign) => sign.speaks === speaks);
  const verdict = verdictOf(signs, early);
  const rules = (left < 0 ? NEXT_LATE : NEXT)[verdict].map(sealRule);
  const open = verdict === 'not sealed' || verdict === 'doubtful';
  const tooLate = open && left < 0;
  return answer({
    verdict,
    because: (verdict === 'discard' ? saying('spoiled') : verdict === 'not sealed' ? saying('against') : signs).map(
      ({ said }) => said,
    ),
    next: [...rules.map(({ text }) => text), ...(tooLate ? [jarCaution('unsealed-too-long').text] : [])],
    ...(open && !tooLate ? { reprocessWithin: quantityIn(left, 'h', given.sinceProcessing.unit) } : {}),
    basis: [
      ...signs.map(({ basis }) => basis),
      basisOf(cooled, 'verdict', 'cooling before the tests'),
      basisOf(again, 'verdict', 'time to process again'),
      ...rules.map((row) => basisOf(row, 'next')),
      ...(tooLate ? [practiceBasis('next', 'throw out what stood unsealed for longer')] : []),
    ],
    cautions: [
      jarCaution('no-reading-proves-a-seal'),
      ...(tooLate ? [jarCaution('unsealed-too-long')] : []),
      ...(verdict === 'discard' || (verdict === 'not sealed' && tooLate) ? [jarCaution('spoiled-jar')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
