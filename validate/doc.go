// Package validate judges a site that package content has read, and refuses
// what a published tested process does not stand behind.
//
// It never invents a process, interpolates a time or calls a recipe safe. It
// says that a recipe agrees with the process that it cites, or where it does
// not. What a recipe does not say is asked for, never assumed.
package validate
