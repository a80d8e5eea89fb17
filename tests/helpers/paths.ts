/** Whether a path such as `ready.low` or `ways[].jar` leads to something in an answer. */
export function hasPath(answer: unknown, path: string): boolean {
  const steps = path.replaceAll('[', '.[').split('.');
  return leads(answer, steps);
}

function leads(value: unknown, [step, ...rest]: readonly string[]): boolean {
  if (step === undefined) return value !== undefined;
  if (step === '[]') return Array.isArray(value) && value.some((item) => leads(item, rest));
  const index = /^\[(\d+)\]$/.exec(step)?.[1];
  if (index !== undefined) return Array.isArray(value) && leads(value[Number(index)], rest);
  if (typeof value !== 'object' || value === null) return false;
  return leads((value as Record<string, unknown>)[step], rest);
}

/** The lines of an answer's basis whose `of` is no path of the answer. */
export const lostPaths = (answer: unknown): string[] => {
  const { basis = [] } = answer as { basis?: readonly { of: string }[] };
  return basis.map(({ of }) => of).filter((of) => !hasPath(answer, of));
};
