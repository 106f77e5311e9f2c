export const findTestChromium: () => string | undefined;
