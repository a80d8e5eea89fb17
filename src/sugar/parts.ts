import { fail } from '../errors/StillroomError';
import { amountOf, isTwofold } from '../quantity/amount';
import { reading } from '../quantity/fields';
import { hundredthOf } from '../quantity/share';
import type { ShareInput } from '../quantity/types';

/** Sugar to fruit by weight: 1 is pound for pound, `"55:45"` is 55 parts of sugar to 45 of fruit. */
export type PartsInput = ShareInput | `${number}:${number}`;

const PARTS = /^(\d{1,6}(?:\.\d{1,6})?)\s*:\s*(\d{1,6}(?:\.\d{1,6})?)$/;
const EXPECTED = 'sugar to fruit by weight: a number from 0 to 10, a percentage, or parts such as "55:45"';
const LONGEST = 40;

function partsOf(given: unknown): number | undefined {
  if (typeof given === 'number') return given;
  if (typeof given !== 'string' || given.length > LONGEST) return undefined;
  const text = given.trim();
  const [, sugar, fruit] = PARTS.exec(text) ?? [];
  if (sugar !== undefined) return Number(sugar) / Number(fruit);
  const percent = text.endsWith('%') ? amountOf(text.slice(0, -1)) : undefined;
  return percent === undefined || isTwofold(percent) ? undefined : percent.point && hundredthOf(percent.point);
}

/** A field of sugar to fruit by weight; unlike a share it may be above one. */
export const partsField = () =>
  reading<PartsInput, number>((given) => {
    if (given === undefined) fail('MISSING', '', given, EXPECTED);
    if (typeof given !== 'number' && typeof given !== 'string') fail('WRONG_TYPE', '', given, EXPECTED);
    const parts = partsOf(given);
    if (parts === undefined) fail('NOT_A_QUANTITY', '', given, EXPECTED);
    if (!(parts >= 0 && parts <= 10)) fail('OUT_OF_RANGE', '', given, EXPECTED);
    return parts;
  });
