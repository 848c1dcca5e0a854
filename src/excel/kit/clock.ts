/** Serial day on the user's clock, as TODAY() counts it. */
export const today = (): number => Math.floor(Date.now() / 86_400_000 - new Date().getTimezoneOffset() / 1440) + 25569;
