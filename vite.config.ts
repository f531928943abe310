/** How the app is built: any static host, any sub-path, everything kept on the device. */

import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentSecurityPolicy } from './scripts/security-headers.mjs';

const paper = '#FAF8F3';

/** Only in the built page: the development server needs inline scripts for hot replacement. */
const securityPolicyInPage: Plugin = {
  name: 'security-policy-in-page',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  base: './',
  plugins: [
    react(),
    securityPolicyInPage,
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src/pwa',
      filename: 'service-worker.ts',
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false, // the pattern below has them already
      showMaximumFileSizeToCacheInBytesWarning: false,
      injectManifest: {
        rollupFormat: 'iife',
        globPatterns: ['**/*'],
        globIgnores: ['robots.txt', 'service-worker.*'],
        maximumFileSizeToCacheInBytes: 2 * 1024 * 1024,
      },
      manifest: {
        id: 'standbook',
        name: 'Standbook',
        short_name: 'Standbook',
        description:
          'The book kept at the workstand: from a sealed box to a bike that someone answers for.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        orientation: 'any',
        theme_color: paper,
        background_color: paper,
        icons: [
          { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
          {
            src: 'icons/maskable-192.png',
            sizes: '192x192',
            type: 'image/png',
            purpose: 'maskable',
          },
          {
            src: 'icons/maskable-512.png',
            sizes: '512x512',
            type: 'image/png',
            purpose: 'maskable',
          },
        ],
      },
    }),
  ],
  build: {
    target: ['chrome111', 'edge111', 'firefox121', 'safari16.4'],
    // Inlined fonts and scripts would be `data:` addresses, which the security policy refuses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
});
