// Stands in for optional packages of a dependency that we never call.
export default undefined;
