/**
 * Finds the code examples of docstrings and Markdown pages and runs them.
 *
 * In an example, `// =>` after an expression is its whole value, `// ≈` a number good to the digits printed,
 * and `// throws StillroomError CODE` the error it must throw.
 */
import { readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';

export interface Snippet {
  file: string;
  line: number;
  code: string;
}

/** The `ts` code blocks of a file; in a source file only those inside docstrings. */
export function snippetsOf(file: string): Snippet[] {
  const inSource = file.endsWith('.ts');
  const lines = readFileSync(file, 'utf8').split('\n');
  const snippets: Snippet[] = [];
  let open: Snippet | undefined;
  lines.forEach((raw, index) => {
    const text = inSource ? raw.replace(/^\s*\* ?/, '') : raw;
    if (open === undefined) {
      if (/^```(ts|js)\s*$/.test(text.trim()) && (!inSource || /^\s*\*/.test(raw)))
        open = { file, line: index + 1, code: '' };
    } else if (text.trim() === '```') {
      snippets.push(open);
      open = undefined;
    } else open.code += `${text}\n`;
  });
  return snippets;
}

interface Marked {
  value: () => unknown;
  kind: string;
  wanted: string;
  line: string;
}

/** Puts every marked expression into a call that checks it. */
function instrument(code: string): string {
  const out: string[] = [];
  const statement: string[] = [];
  for (const line of code.split('\n')) {
    const match = /^(.*?);?\s*\/\/ (=>|≈|throws)\s*(.*)$/.exec(line);
    if (match === null) {
      statement.push(line);
      // a statement ends at a line that ends with ; or } at the margin
      if (/(;|^\}|^\s*)$/.test(line)) out.push(...statement.splice(0));
      continue;
    }
    const [, rest = '', kind = '', wanted = ''] = match;
    const expression = [...statement.splice(0), rest].join('\n').trim();
    out.push(
      `await __check({ kind: ${JSON.stringify(kind)}, wanted: ${JSON.stringify(wanted)}, line: ${JSON.stringify(rest.trim())}, value: () => (${expression.replace(/^\/\/.*\n/gm, '').replace(/^await\s+/, '')}) });`,
    );
  }
  out.push(...statement);
  return out.join('\n');
}

const withDigits = (wanted: string): { value: number; tolerance: number } => {
  const digits = /\.(\d*)/.exec(wanted)?.[1]?.length ?? 0;
  return { value: Number(wanted), tolerance: 0.5 * 10 ** -digits * (1 + 1e-9) };
};

/** Runs a snippet with the given modules; throws where a marked value is not what the comment says. */
export async function runSnippet(
  snippet: Snippet,
  load: (name: string) => Promise<Record<string, unknown>>,
  equal: (actual: unknown, wanted: unknown, line: string) => void,
): Promise<number> {
  const imports: Record<string, Record<string, unknown>> = {};
  const source = snippet.code.replace(
    /^import\s+(?:type\s+)?(\{[^}]*\}|\* as \w+)\s+from\s+'([^']+)';?/gm,
    (_, names: string, from: string) => {
      imports[from] = {};
      const binding = names.startsWith('*')
        ? names.replace('* as ', '')
        : names.replace(/\btype \w+,?/g, '').replace(/ as /g, ': ');
      return `const ${binding} = __modules[${JSON.stringify(from)}];`;
    },
  );
  for (const name of Object.keys(imports)) imports[name] = await load(name);
  const { code } = transformSync(`(async () => {\n${instrument(source)}\n})()`, { loader: 'ts', target: 'es2022' });
  let checks = 0;
  const check = async ({ value, kind, wanted, line }: Marked) => {
    checks += 1;
    if (kind === 'throws') {
      let thrown: { name?: string; code?: string } | undefined;
      try {
        await value();
      } catch (error) {
        thrown = error as { name?: string; code?: string };
      }
      return equal(thrown === undefined ? 'no error' : `${thrown.name} ${thrown.code}`, wanted.trim(), line);
    }
    const actual = await value();
    if (kind === '≈') {
      const { value: target, tolerance } = withDigits(wanted.trim());
      const close = typeof actual === 'number' && Math.abs(actual - target) <= tolerance;
      return equal(close ? target : actual, target, line);
    }
    const literal: unknown = new Function(`return (${wanted})`)();
    return equal(JSON.parse(JSON.stringify(actual ?? null)), JSON.parse(JSON.stringify(literal ?? null)), line);
  };
  const log: unknown[] = [];
  const quiet = { log: (...values: unknown[]) => log.push(values), table: () => {}, error: () => {} };
  await (new Function('__modules', '__check', 'console', `return ${code}`)(imports, check, quiet) as Promise<void>);
  return checks;
}
