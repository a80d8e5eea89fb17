/** The answer, where these tables have the figure; the test ends where they do not. */
export function known<T extends { readonly known: boolean }>(answered: T): Extract<T, { readonly known: true }> {
  if (!answered.known) throw new Error(`no figure: ${JSON.stringify(answered)}`);
  return answered as Extract<T, { readonly known: true }>;
}
/** What a no offers: the fields of each, in words. */
export const offered = (answer: { readonly known: boolean; readonly instead?: readonly { readonly text: string }[] }) =>
  (answer.instead ?? []).map(({ text }) => text);
