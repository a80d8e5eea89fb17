/** Bundles a program with each of the usual bundlers, as a user would with no plugin but the one that finds packages. */
import { createRequire } from 'node:module';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import * as esbuild from 'esbuild';
import { rollup } from 'rollup';
import { build as viteBuild } from 'vite';

/** Bundles `input` into `output`; both are whole paths. */
export type Bundler = (input: string, output: string) => Promise<unknown>;

export const withEsbuild: Bundler = (input, output) =>
  esbuild.build({ entryPoints: [input], outfile: output, bundle: true, format: 'esm', logLevel: 'error' });

export const withRollup: Bundler = async (input, output) => {
  const bundle = await rollup({
    input,
    plugins: [nodeResolve()],
    onwarn: ({ message }) => {
      throw new Error(message);
    },
  });
  await bundle.write({ file: output, format: 'es' });
};

export const withVite: Bundler = (input, output) =>
  viteBuild({
    root: input.slice(0, input.lastIndexOf('/')),
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: output.slice(0, output.lastIndexOf('/')),
      emptyOutDir: false,
      modulePreload: false,
      rollupOptions: { input, output: { entryFileNames: output.slice(output.lastIndexOf('/') + 1) } },
    },
  });

type Webpack = (
  options: object,
  done: (error: Error | null, stats?: { hasErrors(): boolean; toString(): string }) => void,
) => void;

/** Webpack lies in a scratch folder; it needs the text of `require` alone. */
export const withWebpack =
  (packages: string): Bundler =>
  (input, output) =>
    new Promise<void>((resolve, reject) => {
      const webpack = createRequire(`${packages}/`)('webpack') as Webpack;
      const at = output.lastIndexOf('/');
      const options = {
        mode: 'production',
        entry: input,
        context: input.slice(0, input.lastIndexOf('/')),
        output: { path: output.slice(0, at), filename: output.slice(at + 1) },
        performance: false,
        optimization: { minimize: false },
      };
      webpack(options, (error, stats) => {
        if (error !== null) reject(error);
        else if (stats?.hasErrors()) reject(new Error(stats.toString()));
        else resolve();
      });
    });
