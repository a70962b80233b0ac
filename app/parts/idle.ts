/**
 * A button that cannot be pressed just now and says so, yet keeps the focus: from one that is `disabled` it would fall
 * to the page.
 */
export const unless = (idle: boolean, press: () => void) => ({
  'aria-disabled': idle,
  onClick: () => {
    if (!idle) press();
  },
});
