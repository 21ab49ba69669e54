/**
 * How Astro compiles the pages of `src/site` into one module, once, when this package is built: see
 * `scripts/build-pages.mjs`. Astro calls what makes a module of its pages an adapter.
 */
const adapter = {
  name: 'linewright-pages',
  hooks: {
    'astro:config:done': ({ setAdapter }) =>
      setAdapter({
        name: 'linewright-pages',
        serverEntrypoint: new URL('./src/site/pages-entry.ts', import.meta.url),
        entrypointResolution: 'auto',
        adapterFeatures: { buildOutput: 'server' },
        supportedAstroFeatures: { serverOutput: 'stable' },
      }),
  },
};

export default {
  output: 'server',
  adapter,
  srcDir: './src/site',
  // Faults come back as exceptions.
  logLevel: 'silent',
  devToolbar: { enabled: false },
  image: { service: { entrypoint: 'astro/assets/services/noop' } },
  vite: { ssr: { noExternal: true }, build: { minify: true } },
};
