import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Of one file kept for use offline, bytes: a larger one is a mistake and stops the build. */
const largestKeptBytes = 2 * 1024 * 1024;

/**
 * Writes sw.js, which keeps every file of the built site on the visitor's device, and the manifest by which the site is put on a
 * home screen. A newer version waits until a page asks for it: the page that is open never changes under anyone's hands.
 */
export function offlineSite(): Plugin[] {
  return VitePWA({
    registerType: 'prompt',
    // The page registers it itself, from a module: a script in the markup would break the content policy.
    injectRegister: null,
    // The pattern below finds them.
    includeManifestIcons: false,
    // After the pages without scripts have been written, so that they are kept too.
    integration: { closeBundleOrder: 'post' },
    workbox: {
      globPatterns: ['**/*.{html,js,css,svg,png,woff2,txt}'],
      globIgnores: ['sw.js'],
      maximumFileSizeToCacheInBytes: largestKeptBytes,
      inlineWorkboxRuntime: true,
      // A page that was opened before its first copy was complete can lose the network from then on.
      clientsClaim: true,
      cleanupOutdatedCaches: true,
      // The address of a season lies behind the #; what stands behind a ? names no other file.
      ignoreURLParametersMatching: [/.*/],
      navigateFallback: null,
    },
    manifest: {
      id: './',
      name: 'Seamfield: from the planter to the cutting table',
      short_name: 'Seamfield',
      description: 'Follow one season of cotton from planting to cloth, and see where every pound went.',
      lang: 'en',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#eee4cf',
      theme_color: '#22356a',
      icons: [
        { src: 'icons/seamfield.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icons/seamfield-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icons/seamfield-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icons/seamfield-512-full.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
  });
}
