/** Faults on purpose: killed processes, full disks, damaged files, hostile input. */
@org.jspecify.annotations.NullMarked
package fettle.reliability;
