import type { BrowserContext } from 'playwright-core';

/** What the pages of a person complained of since: errors that nobody caught, and what was written as an error. */
export function troublesOf(context: BrowserContext): readonly string[] {
  const heard: string[] = [];
  context.on('weberror', (event) => heard.push(`not caught: ${event.error().message}`));
  context.on('console', (message) => {
    if (message.type() === 'error') heard.push(`${message.text()} (${message.location().url})`);
  });
  return heard;
}
