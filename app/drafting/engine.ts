/** The version of the drafting engine: written into every draft and PDF; equals the package's (a test holds them together). */
export const ENGINE = '0.1.0';
