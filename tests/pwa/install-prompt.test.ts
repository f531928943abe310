/** The browser's offer to install is held until somebody asks. */

import { describe, expect, test, vi } from 'vitest';
import { createInstallPrompt } from '../../src/pwa/install-prompt';

function offer(outcome: 'accepted' | 'dismissed') {
  const prompt = vi.fn(async () => ({ outcome }));
  const event = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), { prompt });
  return { event, prompt };
}

function createPage({ standalone = false } = {}) {
  const page = Object.assign(new EventTarget(), { matchMedia: () => ({ matches: standalone }) });
  return page as unknown as Window; // only what the module uses of a window
}

describe('install prompt', () => {
  test('without an offer there is nothing to ask', async () => {
    const prompt = createInstallPrompt(createPage());
    expect(prompt.isOffered()).toBe(false);
    expect(await prompt.ask()).toBe('not-offered');
  });

  test('an offer is kept from showing itself, and shown when asked, once', async () => {
    const page = createPage();
    const prompt = createInstallPrompt(page);
    const { event, prompt: show } = offer('accepted');
    page.dispatchEvent(event);
    expect(event.defaultPrevented).toBe(true);
    expect(show).not.toHaveBeenCalled();
    expect(prompt.isOffered()).toBe(true);

    expect(await prompt.ask()).toBe('accepted');
    expect(show).toHaveBeenCalledOnce();
    expect(prompt.isOffered()).toBe(false);
    expect(await prompt.ask()).toBe('not-offered');
  });

  test('listeners hear of offers and of installing until they stop', () => {
    const page = createPage();
    const prompt = createInstallPrompt(page);
    const heard = vi.fn();
    const stop = prompt.onChange(heard);
    page.dispatchEvent(offer('dismissed').event);
    page.dispatchEvent(new Event('appinstalled'));
    expect(heard).toHaveBeenCalledTimes(2);
    expect(prompt.isInstalled()).toBe(true);
    expect(prompt.isOffered()).toBe(false);
    stop();
    page.dispatchEvent(new Event('appinstalled'));
    expect(heard).toHaveBeenCalledTimes(2);
  });

  test('an app in its own window counts as installed', () => {
    expect(createInstallPrompt(createPage({ standalone: true })).isInstalled()).toBe(true);
    expect(createInstallPrompt(createPage()).isInstalled()).toBe(false);
  });
});
