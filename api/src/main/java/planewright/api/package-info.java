/** What a calculator plugin compiles against, and nothing else. */
package planewright.api;
