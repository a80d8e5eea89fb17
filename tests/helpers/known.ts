import type { NotKnown } from '../../src/sources/no';

/** An answer that must be known; the test fails with its reason otherwise. */
export function known<T extends { readonly known: true }>(answer: T | NotKnown): T {
  if (!answer.known) throw new Error(`not known: ${answer.reason.text}`);
  return answer;
}

/** What a no offers: the fields of each, in words. */
export const offered = (answer: { readonly known: boolean; readonly instead?: readonly { readonly text: string }[] }) =>
  (answer.instead ?? []).map(({ text }) => text);
