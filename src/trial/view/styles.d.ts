/** Style sheets are imported for their effect; the build puts them beside the page's script. */
declare module "*.css";
