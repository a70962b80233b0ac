/** From the side: the phone held level above a toy on its back, the card on a book at the height of what is measured. */
export function IntroPicture() {
  return (
    <svg class="photo-drawing" viewBox="0 0 320 148" aria-hidden="true" focusable="false">
      <path class="photo-ray" d="M128 22 36 96M192 22l92 74" />
      <rect class="photo-phone" x="116" y="10" width="88" height="11" rx="4" />
      <rect class="photo-lens" x="152" y="21" width="16" height="4" rx="2" />
      <path class="photo-plane" d="M12 96h296" />
      <path class="photo-table" d="M8 138h304" />
      <path
        class="photo-toy"
        d="M40 138c-16-2-20-18-10-27 6-6 16-7 24-3 12-9 30-13 50-13 22 0 44 5 54 15 10-4 22 0 24 9 3 10-4 18-14 19z"
      />
      <path class="photo-book" d="M206 100h84v38h-84a5 5 0 0 1-5-5v-28a5 5 0 0 1 5-5zM206 132h84" />
      <rect class="photo-card" x="216" y="94" width="62" height="5" rx="1.5" />
    </svg>
  );
}
