/** Path of an installed Chromium-family browser; throws one sentence that says what to install. */
export function findBrowser(options?: { install?: boolean }): Promise<string>;
