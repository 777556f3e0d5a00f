use core::{
    alloc::{GlobalAlloc, Layout},
    panic::PanicInfo,
    ptr,
};

use sugaring::units::{deg_c, deg_f};

/// Keeps the core in the image.
#[unsafe(no_mangle)]
pub extern "C" fn celsius(fahrenheit: f64) -> f64 {
    deg_f(fahrenheit).get::<deg_c>()
}

/// The image is linked, never run: it has no memory to give.
struct NoMemory;

// SAFETY: a null pointer is the permitted answer of an allocator that has no memory.
unsafe impl GlobalAlloc for NoMemory {
    unsafe fn alloc(&self, _: Layout) -> *mut u8 {
        ptr::null_mut()
    }

    unsafe fn dealloc(&self, _: *mut u8, _: Layout) {}
}

#[global_allocator]
static MEMORY: NoMemory = NoMemory;

#[panic_handler]
fn stop(_: &PanicInfo<'_>) -> ! {
    loop {}
}
