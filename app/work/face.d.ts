/** A font that the build has cut down to the letters we need: the address of what is left. */
declare module '*.ttf?face' {
  const address: string;
  export default address;
}
